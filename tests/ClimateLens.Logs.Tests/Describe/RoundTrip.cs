using System.Text;
using ClimateLens.Logs.Describe;
using ClimateLens.Logs.Tests.Made;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>What became of a made export.</summary>
internal enum Outcome
{
    /// <summary>Every value and time came back.</summary>
    Read,

    /// <summary>What came back is right, but a column was asked about or left out.</summary>
    ReadInPart,

    /// <summary>The draft asks what nothing can be read without.</summary>
    Asked,

    /// <summary>The draft said it was sure, and a value, a time or a channel is wrong or lost.</summary>
    Wrong,
}

/// <summary>Describes a made export, imports it with the draft, and compares every value and instant with what was written.</summary>
internal static class RoundTrip
{
    private const string Place = "[nursery]\nname = \"T\"\ntimeZone = \"{0}\"\nlatitude = 50\nlongitude = 0\nelevationM = 0\n[[house]]\nid = \"1\"\n";

    public static (Outcome Outcome, string Why) Of(MadeExport made)
    {
        using var folder = new TemporaryFolder();
        string path = folder.PathOf(made.FileName);
        File.WriteAllBytes(path, made.Bytes);
        Description description = FileDescriber.Describe([path], new DescribeOptions("1", "made", ["1"], folder.Path));
        string told = $"{made.Story}\n{description.Toml}\n{string.Join('\n', description.Problems)}";
        if (description.Exports.Length != 1)
        {
            return (Outcome.Asked, $"{description.Exports.Length} drafts\n{told}");
        }

        if (description.Exports[0].IsBlocked || description.Exports[0].Columns.All(c => c.Sureness == Sureness.Unsure))
        {
            return (Outcome.Asked, told);
        }

        NurserySettings settings;
        try
        {
            settings = NurseryFile.Parse("nursery.toml", Encoding.UTF8.GetBytes(Place.Replace("{0}", made.Style.Zone, StringComparison.Ordinal) + description.Toml));
        }
        catch (NurseryFileException refusal)
        {
            return (Outcome.Wrong, $"refused: {refusal.Message}\n{told}");
        }

        using var store = ReadingStore.Open(settings, folder.Path);
        ImportReport report = store.Import();
        HouseInput input = store.Load(settings.Houses[0], new Interval(Instant.FromUtc(1990, 1, 1, 0, 0), Instant.FromUtc(2100, 1, 1, 0, 0)), Duration.Zero);
        string? fault = Fault(made, settings.Exports[0], input, description, folder.Path, out int columns);
        return fault is not null ? (Outcome.Wrong, $"{fault}\n{told}\n{string.Join('\n', report.Problems)}")
            : columns == made.Columns.Count(c => c.IsChannel) ? (Outcome.Read, told) : (Outcome.ReadInPart, told);
    }

    private static string? Fault(MadeExport made, ExportSettings export, HouseInput input, Description description, string folder, out int columns)
    {
        columns = export.Columns.Length;
        if (input.Batches.Length != 1 || columns == 0)
        {
            return "nothing was imported";
        }

        var read = new List<(MadeColumn, string)>();
        foreach (ColumnSettings column in export.Columns)
        {
            int place = column.Field.Position is int position ? position - 1 - made.FirstColumn : made.Columns.ToList().FindIndex(c => c.Header == column.Field.Name);
            if (place < 0 || made.Columns[place].Known != column.Channel)
            {
                return $"{column.Field} is {(place < 0 ? "no column of values" : made.Columns[place].Known)}, drafted as {column.Channel}";
            }

            read.Add((made.Columns[place], new ColumnKey(column.Channel, column.Sensor).ToString()));
        }

        string aside = Path.Combine(folder, "store", "set-aside");
        string[] files = Directory.Exists(aside) ? Directory.GetFiles(aside, "*.csv", SearchOption.AllDirectories) : [];
        IReadOnlyList<string> faults = ImportOracle.Faults(made, read, input, files.SelectMany(SetAsideReader.Read).Select(a => (a.Line, a.Code)));
        return faults.Count > 0 ? string.Join("; ", faults.Take(3)) : null;
    }
}
