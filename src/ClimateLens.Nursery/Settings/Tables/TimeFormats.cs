using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>The keys <c>format</c> and <c>year</c> of [export.time].</summary>
internal static class TimeFormats
{
    private const int MostFormats = 8;
    private const int FirstYear = 1950;
    private const int LastYear = 2199;
    private const string Letters = "yyyy MM dd HH mm ss and the marks between them";

    /// <summary>The formats in their order, at least one; <c>iso</c> stands for what is wrong.</summary>
    /// <param name="time">The table.</param>
    /// <param name="timeNeeded">Whether an hour has to be there, in the first format of a list.</param>
    /// <param name="columns">Number of columns that the time stands in.</param>
    /// <param name="timeOfDay">Whether the last of them is named as that of the time of day.</param>
    public static ImmutableArray<string> Read(TableReader time, bool timeNeeded, int columns, bool timeOfDay)
    {
        const string Example = "\"yyyy-MM-dd HH:mm\" as the export writes it, or \"iso\"";
        bool yearGiven = time.Has("year");
        if (time.Find("format")?.Value is not TomlArray { FromHeaders: false } list)
        {
            Place at = time.PlaceOf("format");
            string? one = time.Text("format", Example);
            CheckYear(time, one is null ? [] : [one]);
            return [one is not null && IsUsable(time, one, at, timeNeeded, yearGiven) && FitsColumns(time, one, at, columns, timeOfDay) ? one : StampWords.Iso];
        }

        ImmutableArray<string> all = time.Texts("format", Example);
        if (list.Items.Count is 0 or > MostFormats)
        {
            time.Faults.Error(FaultCodes.Format, list.At, $"format has {NumberKeys.Show(list.Items.Count)} formats", $"1 to {NumberKeys.Show(MostFormats)}", "list the formats that rows of the export have, the usual one first.");
        }

        if (all.GroupBy(f => f).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            time.Faults.Error(FaultCodes.Format, list.At, $"format has {Excerpt.Quoted(twice.Key)} twice", "each format once", "take one out.");
        }

        CheckYear(time, all);
        bool usable = all.Length == list.Items.Count && !all.IsEmpty;
        for (int i = 0; i < all.Length && all.Length == list.Items.Count; i++)
        {
            // Spreadsheets leave out the time of day at midnight: behind a whole format the date alone may stand.
            usable &= IsUsable(time, all[i], list.Items[i].At, timeNeeded && i == 0, yearGiven) && FitsColumns(time, all[i], list.Items[i].At, columns, timeOfDay);
        }

        return usable ? all : [StampWords.Iso];
    }

    /// <summary>The year of stamps that name none.</summary>
    public static int? YearOf(TableReader time) => time.Whole("year", FirstYear, LastYear, "(the year of the oldest stamp)");

    private static bool IsUsable(TableReader time, string format, Place at, bool timeNeeded, bool yearGiven)
    {
        if (HasYear(format, timeNeeded) || StampPattern.FaultOf(format, timeNeeded, !yearGiven) is not { } fault)
        {
            WarnOfPlainZ(time, format, at);
            return true;
        }

        if (MeantWord(format) is { } meant)
        {
            time.Faults.Error(FaultCodes.Format, at, $"format = {Excerpt.Quoted(format)} is not known", $"a pattern, or one of: {string.Join(", ", StampWords.All)}", meant);
            return false;
        }

        time.Faults.Error(FaultCodes.Format, at, $"format = {Excerpt.Quoted(format)} has {fault}", Letters, Mend(format, timeNeeded, yearGiven));
        return false;
    }

    private static bool HasYear(string format, bool timeNeeded) => StampWords.Contains(format) || StampPattern.FaultOf(format, timeNeeded) is null;

    /// <summary>Reports a year beside formats that have it themselves.</summary>
    private static void CheckYear(TableReader time, ImmutableArray<string> formats)
    {
        if (time.Has("year") && formats.Any(format => HasYear(format, timeNeeded: false)))
        {
            time.NotHere("year", "stands beside a format that has the year", "take it out.");
        }
    }

    /// <summary>Reports a format that cannot be spread over the columns.</summary>
    private static bool FitsColumns(TableReader time, string format, Place at, int columns, bool timeOfDay)
    {
        if (timeOfDay && !StampWords.Contains(format) && !StampPattern.IsDateBlankTime(format))
        {
            time.Faults.Error(FaultCodes.Format, at, $"format = {Excerpt.Quoted(format)} beside a column for the time of day", "the date, one space and the time", "write it like \"dd-MM-yyyy HH:mm\", though they stand in two columns.");
            return false;
        }

        if (columns > MostColumns(format))
        {
            time.Faults.Error(FaultCodes.Format, at, $"format = {Excerpt.Quoted(format)} for {NumberKeys.Show(columns)} columns", "one space between the columns",
                StampWords.Contains(format) ? "name the columns that hold the date and the time, and no more." : "write the parts in the order of the columns with a space between them, for example \"yyyy D HHmm\".");
            return false;
        }

        return true;
    }

    private static int MostColumns(string format) => StampWords.Contains(format)
        ? (StampWords.IsUnix(format) ? 1 : 2)
        : StampField.Split(format)!.Count(f => f.Text.Contains(' ', StringComparison.Ordinal)) + 1;

    /// <summary>The mend for a word that is nearly one of ours.</summary>
    private static string? MeantWord(string format) => format.ToLowerInvariant() switch
    {
        "unix" or "epoch" or "posix" or "timestamp" or "unixtime" => "counts since 1970 are \"unixSeconds\" (10 digits), \"unixMilliseconds\" (13) or \"unixMicroseconds\" (16).",
        "excel" or "serial" => "numbers of days are \"excel1900\", or \"excel1904\" where the workbook counts from 1904.",
        "iso8601" or "iso 8601" or "iso-8601" => "did you mean \"iso\"?",
        var lower => StampWords.All.FirstOrDefault(word => word.Equals(lower, StringComparison.OrdinalIgnoreCase)) is { } word ? $"did you mean \"{word}\"?" : null,
    };

    private static string Mend(string format, bool timeNeeded, bool yearGiven)
    {
        if (StampRepair.Of(format, timeNeeded) is { } meant)
        {
            return $"did you mean \"{meant}\"?";
        }

        return !yearGiven && StampPattern.FaultOf(format, timeNeeded, yearNeeded: false) is null
            ? "if the export writes no year, add year = 2025 with the year of its oldest row."
            : "write it as the export does, for example \"dd-MM-yyyy HH:mm\"; words go between 'single quotes'.";
    }

    /// <summary>A Z between quotes is passed over, though it says that the time is UTC.</summary>
    private static void WarnOfPlainZ(TableReader time, string format, Place at)
    {
        if (StampField.Split(format) is [.., { Letter: StampField.Mark, Text: "Z" or "UTC" or "GMT" or " UTC" or " GMT" }] && !time.Has("timeZone"))
        {
            time.Faults.Warning(FaultCodes.Format, at, $"format = {Excerpt.Quoted(format)} passes over a mark that says that the time is UTC", "X for the offset", "write X in place of the quoted text; or timeZone, if the logger writes the mark and keeps another time.");
        }
    }
}
