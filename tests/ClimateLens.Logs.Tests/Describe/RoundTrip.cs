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
        string? fault = Fault(made, settings.Exports[0], input, description, out int columns);
        return fault is not null ? (Outcome.Wrong, $"{fault}\n{told}\n{string.Join('\n', report.Problems)}")
            : columns == made.Columns.Count(c => c.Channel != "other") ? (Outcome.Read, told) : (Outcome.ReadInPart, told);
    }

    private static string? Fault(MadeExport made, ExportSettings export, HouseInput input, Description description, out int columns)
    {
        columns = export.Columns.Length;
        if (input.Batches.Length != 1)
        {
            return "nothing was imported";
        }

        ReadingBatch batch = input.Batches[0];
        var index = batch.UtcMicros.Select((t, i) => (t, i)).ToDictionary(p => p.t, p => p.i);
        foreach (ColumnSettings column in export.Columns)
        {
            int place = column.Field.Position is int position ? position - 1 - made.FirstColumn : made.Columns.ToList().FindIndex(c => c.Header == column.Field.Name);
            if (place < 0 || made.Columns[place].Known != column.Channel)
            {
                return $"{column.Field} is {(place < 0 ? "no column of values" : made.Columns[place].Known)}, drafted as {column.Channel}";
            }

            double[] values = [.. batch.Columns.First(c => c.Key == new ColumnKey(column.Channel, column.Sensor).ToString()).Value];
            if (Differ(made, made.Columns[place], values, index) is { } fault)
            {
                return fault;
            }
        }

        return description.Exports[0].Columns.Any(c => c.Sureness != Sureness.Unsure) ? null : "no column";
    }

    private static string? Differ(MadeExport made, MadeColumn column, double[] values, Dictionary<long, int> index)
    {
        for (int i = 0; i < made.Rows.Length; i++)
        {
            double read = index.TryGetValue(made.Rows[i].Micros, out int row) ? values[row] : double.NaN;
            double written = column.Values[i];
            bool same = double.IsNaN(written) || (made.Rows[i].IsTorn && double.IsNaN(read)) ? double.IsNaN(read) : Math.Abs(read - written) <= 1e-9 * Math.Max(1, Math.Abs(written));
            if (!same)
            {
                return $"{column.Header}: row {i} at {DateTime.UnixEpoch.AddTicks(made.Rows[i].Micros * 10):s} is {read}, was {written}";
            }
        }

        return null;
    }
}
