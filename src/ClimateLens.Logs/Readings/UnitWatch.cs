using System.Runtime.InteropServices;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Channels.Changes;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Looks, after a file was laid over what the store holds of a year, whether the unit of a column seems to change in it or beside it.
/// Nothing is converted.
/// </summary>
internal static class UnitWatch
{
    /// <summary>Days beside a file that are looked at with it, of which the nearest three may hold a change that is told: it takes two days to be seen. [µs]</summary>
    public const long Beside = 8 * 86_400_000_000L;

    private const long Told = 3 * 86_400_000_000L;

    /// <summary>Reports what is found.</summary>
    /// <param name="export">Its settings.</param>
    /// <param name="rows">The file's rows of a year, and those beside them.</param>
    /// <param name="span">First and last stamp of the file's rows of that year. [µs]</param>
    /// <param name="aside">Where it is reported.</param>
    /// <param name="told">What was reported in this run of files that arrive day by day.</param>
    public static void Report(ExportSettings export, ThinRows rows, (long First, long Last) span, SetAsideLog aside, HashSet<string> told)
    {
        ReadOnlySpan<long> stamps = CollectionsMarshal.AsSpan(rows.Utc);
        string[] names = [.. rows.Names];
        foreach (ColumnSettings settings in export.Columns)
        {
            Channel channel = ChannelCatalogue.Get(settings.Channel);
            int column = Array.IndexOf(names, new ColumnKey(settings.Channel, settings.Sensor).ToString());
            if (column < 0 || !UnitCatalogue.TryGet(channel.Quantity, settings.Unit, out Unit declared))
            {
                continue;
            }

            foreach (FoundUnitChange change in UnitChangeFinder.Find(stamps, CollectionsMarshal.AsSpan(rows.Column(column)), channel, declared))
            {
                if (stamps[change.At] >= span.First - Told && stamps[change.At] <= span.Last + Told)
                {
                    Report(export, names[column], declared, change, stamps[change.At], aside, told);
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
}
