using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[export]]: a kind of file and how it reads.</summary>
internal static class ExportTable
{
    public static readonly string[] Keys =
        ["name", "house", "kind", "files", "stepMinutes", "stamps", "time", "column", .. DialectKeys.Keys];

    private const double LongestStepMinutes = 24 * 60;

    /// <summary>All exports in file order.</summary>
    public static ImmutableArray<ExportSettings> ReadAll(TableReader file, ImmutableArray<HouseSettings> houses, DateTimeZone nurseryZone)
    {
        if (!file.Has("export"))
        {
            file.Faults.Missing(FaultCodes.MissingKey, Place.Top, "there is no [[export]] table", "", "add [[export]] with the files that the climate computer writes.");
        }

        Dictionary<string, int> lines = new(StringComparer.OrdinalIgnoreCase);
        List<ExportSettings> exports = [];
        foreach (TableReader table in file.Tables("export", "[[export]]", Keys))
        {
            ExportSettings export = Read(table, houses, nurseryZone);
            exports.Add(export);
            string key = $"{export.House}/{export.Kind}/{export.Name}";
            if (export.Name.Length > 0 && !lines.TryAdd(key, table.PlaceOf("name").Line))
            {
                string line = lines[key].ToString(CultureInfo.InvariantCulture);
                file.Faults.Error(FaultCodes.Repeated, table.PlaceOf("name"), $"export name {Excerpt.Quoted(export.Name)} is used twice for this house", "", $"line {line} has it too; give this export another name.");
            }
        }

        return [.. exports];
    }

    private static ExportSettings Read(TableReader export, ImmutableArray<HouseSettings> houses, DateTimeZone nurseryZone)
    {
        string name = export.Id("name", "\"climate\"") ?? "";
        string house = House(export, houses);
        RecordKind? kind = Kind(export, out bool kindKnown);
        ImmutableArray<string> files = Files(export);
        DialectSettings dialect = DialectKeys.Read(export);
        TimeSettings time = TimeTable.Read(export, dialect, nurseryZone, kind);
        ImmutableArray<ColumnSettings> columns = ColumnTable.ReadAll(export, dialect, kind, kindKnown);
        if (kind is not null)
        {
            RecordCheck.Run(export, kind.Value, columns);
            export.NotHere("stepMinutes", "is for readings only", "take it out.");
            export.NotHere("stamps", "is for readings only", "take it out.");
        }

        return new(name, house, kind, files, dialect, time, columns, StepSeconds(export), Side(export, time), export.At.Line);
    }

    private static string House(TableReader export, ImmutableArray<HouseSettings> houses)
    {
        if (export.Text("house") is not { } house)
        {
            return ReadingBatch.WholeNursery;
        }

        string[] ids = [.. houses.Select(h => h.Id).Where(id => id.Length > 0)];
        if (!ids.Contains(house) && ids.Length == houses.Length && ids.Length > 0)
        {
            string all = string.Join(", ", ids.Select(Excerpt.Quoted));
            export.Faults.Missing(FaultCodes.Reference, export.PlaceOf("house"), $"there is no house {Excerpt.Quoted(house)}", $"one of: {all}", MendHouse(house, houses, ids));
        }

        return house;
    }

    private static string MendHouse(string written, ImmutableArray<HouseSettings> houses, string[] ids)
    {
        if (written == ReadingBatch.WholeNursery)
        {
            return "leave house out for an export that serves the whole nursery.";
        }

        string? called = houses.FirstOrDefault(h => h.Name.Equals(written, StringComparison.OrdinalIgnoreCase))?.Id;
        return called is not null ? $"write its id: house = \"{called}\"" : NearestName.Mend(written, ids, "write the id of a [[house]], or add that house.");
    }

    private static RecordKind? Kind(TableReader export, out bool known)
    {
        known = true;
        if (!export.Has("kind"))
        {
            return null;
        }

        known = export.Choice("kind", RecordKinds.Words) is { } word && RecordKinds.TryParse(word, out _);
        return known && RecordKinds.TryParse(export.Text("kind")!, out RecordKind kind) ? kind : null;
    }

    private static ImmutableArray<string> Files(TableReader export)
    {
        const string Example = "[\"exports/house-1-*.csv\"]";
        if (!export.Has("files"))
        {
            export.Missing("files", Example);
        }

        ImmutableArray<string> files = export.Texts("files", Example);
        if (export.Find("files")?.Value is TomlArray { Items.Count: 0 } empty)
        {
            export.Faults.Error(FaultCodes.Text, empty.At, "files is empty", "at least one file", $"write for example files = {Example}");
        }

        ReportMissing(export);
        return files;
    }

    private static void ReportMissing(TableReader export)
    {
        TomlArray? list = export.Find("files")?.Value as TomlArray;
        foreach (TomlScalar item in list?.Items.OfType<TomlScalar>() ?? [])
        {
            if (item.Value is string { Length: > 0 } path && path.AsSpan().IndexOfAny('*', '?') < 0 && !export.Faults.FileExists(path))
            {
                export.Faults.Error(FaultCodes.File, item.At, $"there is no file {Excerpt.Quoted(path)}", "a file that exists, beside the nursery file or by its whole path",
                    "correct the path, put the file there, or write a pattern such as \"exports/*.csv\" for files that come and go.");
            }
        }
    }

    private static int? StepSeconds(TableReader export)
    {
        if (export.Number("stepMinutes", 0, LongestStepMinutes, "minutes") is not { } minutes)
        {
            return null;
        }

        double seconds = minutes * 60;
        if (Math.Abs(seconds - Math.Round(seconds)) > 1e-6 || seconds < 1)
        {
            export.Faults.Error(FaultCodes.Range, export.PlaceOf("stepMinutes"), $"stepMinutes = {NumberKeys.Show(minutes)}", "a whole number of seconds, at least one", "write for example stepMinutes = 5, or 0.5 for half a minute.");
        }

        return (int)Math.Round(seconds);
    }

    private static StampSide Side(TableReader export, TimeSettings time)
    {
        StampSide side = export.Choice("stamps", FileWords<StampSide>.All) is { } word && FileWords<StampSide>.TryGet(word, out StampSide known) ? known : StampSide.Instant;
        if (time.EndFields.IsEmpty)
        {
            return side;
        }

        // A row with a start and an end names its interval; its time is the start.
        if (export.Has("stamps") && side != StampSide.IntervalStart)
        {
            export.NotHere("stamps", "stands beside an end in [export.time], and a row's time is then the start of its interval", "take it out.");
        }

        return StampSide.IntervalStart;
    }
}
