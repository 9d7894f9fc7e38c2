using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Channels.Changes;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Looks, after a file was laid over what the store holds of a year, whether the unit of a column seems to change in it or beside it.
/// Nothing is converted.
/// </summary>
internal static class UnitWatch
{
    // Days beside the file that are looked at with it, and the farthest of them in which a change is told: it takes two days to be seen.
    private const long Beside = 8 * 86_400_000_000L, Told = 3 * 86_400_000_000L;

    /// <summary>Reports what is found.</summary>
    /// <param name="export">Its settings.</param>
    /// <param name="merged">The year with the file's rows.</param>
    /// <param name="read">The file's rows of that year.</param>
    /// <param name="aside">Where it is reported.</param>
    /// <param name="told">What was reported in this run of files that arrive day by day.</param>
    public static void Report(ExportSettings export, YearRows merged, YearRows read, SetAsideLog aside, HashSet<string> told)
    {
        if (read.Count == 0)
        {
            return;
        }

        (long first, long last) = (read.Utc[0], read.Utc[read.Count - 1]);
        int start = LowerBound(merged, first - Beside), end = LowerBound(merged, last + Beside);
        ReadOnlySpan<long> stamps = merged.Utc.AsSpan(start, end - start);
        foreach (ColumnSettings settings in export.Columns)
        {
            Channel channel = ChannelCatalogue.Get(settings.Channel);
            int column = Array.IndexOf(merged.Names, new ColumnKey(settings.Channel, settings.Sensor).ToString());
            if (column < 0 || !UnitCatalogue.TryGet(channel.Quantity, settings.Unit, out Unit declared))
            {
                continue;
            }

            foreach (FoundUnitChange change in UnitChangeFinder.Find(stamps, merged.Columns[column].AsSpan(start, end - start), channel, declared))
            {
                if (stamps[change.At] >= first - Told && stamps[change.At] <= last + Told)
                {
                    Report(export, merged.Names[column], declared, change, stamps[change.At], aside, told);
                }
            }
        }
    }

    private static void Report(ExportSettings export, string name, Unit declared, FoundUnitChange change, long utc, SetAsideLog aside, HashSet<string> told)
    {
        string from = LocalDateTimePattern.GeneralIso.Format(Micros.ToInstant(utc).InZone(export.Time.Zone).LocalDateTime);
        string found = $"{name} {(change.IsAfter ? "from" : "until")} {from}, as if it were in {change.Unit.Code} there";
        if (!told.Add(found))
        {
            return;
        }

        string mend = change.IsAfter
            ? $"unitChanges = [{{ from = {from}, unit = \"{change.Unit.Code}\" }}]"
            : $"unit = \"{change.Unit.Code}\" and unitChanges = [{{ from = {from}, unit = \"{declared.Code}\" }}]";
        aside.Problems.Add(ProblemCodes.UnitChange.In(aside.File, null, null, found, $"values in {declared.Code}", $"If the unit did change, write {mend} for the column and import again."));
    }

    private static int LowerBound(YearRows rows, long utc)
    {
        int at = rows.Utc.AsSpan(0, rows.Count).BinarySearch(utc);
        return at >= 0 ? at : ~at;
    }
}
