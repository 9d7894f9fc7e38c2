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
        var found = new IReadOnlyList<FoundUnitChange>[export.Columns.Length];
        Parallel.For(0, found.Length, i => found[i] = Find(export.Columns[i], rows));
        for (int i = 0; i < found.Length; i++)
        {
            foreach (FoundUnitChange change in found[i])
            {
                long utc = rows.Utc[change.At];
                if (utc >= span.First - Told && utc <= span.Last + Told)
                {
                    Report(export, export.Columns[i], change, utc, aside, told);
                }
            }
        }
    }

    private static IReadOnlyList<FoundUnitChange> Find(ColumnSettings settings, ThinRows rows)
    {
        Channel channel = ChannelCatalogue.Get(settings.Channel);
        int column = rows.IndexOf(NameOf(settings));
        return column >= 0 && UnitCatalogue.TryGet(channel.Quantity, settings.Unit, out Unit? declared)
            ? UnitChangeFinder.Find(CollectionsMarshal.AsSpan(rows.Utc), CollectionsMarshal.AsSpan(rows.Column(column)), channel, declared)
            : [];
    }

    private static string NameOf(ColumnSettings settings) => new ColumnKey(settings.Channel, settings.Sensor).ToString();

    private static void Report(ExportSettings export, ColumnSettings settings, FoundUnitChange change, long utc, SetAsideLog aside, HashSet<string> told)
    {
        string from = LocalDateTimePattern.GeneralIso.Format(Micros.ToInstant(utc).InZone(export.Time.Zone).LocalDateTime);
        string found = $"{NameOf(settings)} {(change.IsAfter ? "from" : "until")} {from}, as if it were in {change.Unit.Code} there";
        if (!told.Add(found))
        {
            return;
        }

        string mend = change.IsAfter
            ? $"unitChanges = [{{ from = {from}, unit = \"{change.Unit.Code}\" }}]"
            : $"unit = \"{change.Unit.Code}\" and unitChanges = [{{ from = {from}, unit = \"{settings.Unit}\" }}]";
        aside.Problems.Add(ProblemCodes.UnitChange.In(aside.File, null, null, found, $"values in {settings.Unit}", $"If the unit did change, write {mend} for the column and import again."));
    }
}
