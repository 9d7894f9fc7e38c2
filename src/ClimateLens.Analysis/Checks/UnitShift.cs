using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels.Changes;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Values that change from one reading to the next as if their unit did (<see cref="UnitChangeFinder"/>): those that do not fit the
/// unit of the nursery file are in doubt. Nothing is converted; the note says what to write.
/// </summary>
internal static class UnitShift
{
    /// <summary>Flags and notes every series that changes so.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        long[] stamps = [.. Enumerable.Range(0, axis.Count).Select(i => axis.StartOf(i).ToUnixTimeTicks() / 10)];
        HousePeriod checkedPeriod = period;
        foreach (Series series in period.Series)
        {
            ColumnSettings? column = ColumnOf.Find(period.Input, series.House, series.Source, series.Channel.Name, series.Sensor);
            Nursery.Channels.Unit declared = ColumnOf.UnitOf(column, series.Channel);
            IReadOnlyList<FoundUnitChange> changes = UnitChangeFinder.Find(stamps, period.Frame.Values(series.Key).AsSpan(), series.Channel, declared);
            if (changes.Count > 0)
            {
                checkedPeriod = checkedPeriod.With(series.Key, QualityCheck.UnitChange, Flags(period, series, changes));
                checkedPeriod = checkedPeriod with { Notes = Notes(checkedPeriod, series, declared, changes) };
            }
        }

        return checkedPeriod;
    }

    /// <summary>Between two changes, before the first and after the last: in doubt where a change says so of that side.</summary>
    private static QualityFlag[] Flags(HousePeriod period, Series series, IReadOnlyList<FoundUnitChange> changes)
    {
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        QualityFlag[] flags = new QualityFlag[values.Length];
        for (int i = 0; i < flags.Length; i++)
        {
            FoundUnitChange? before = changes.Where(c => c.At <= i).Cast<FoundUnitChange?>().LastOrDefault();
            FoundUnitChange? after = changes.Where(c => c.At > i).Cast<FoundUnitChange?>().FirstOrDefault();
            bool other = before is { IsAfter: true } || after is { IsAfter: false };
            flags[i] = other && !double.IsNaN(values[i]) ? QualityFlag.Suspect : QualityFlag.Missing;
        }

        return flags;
    }

    private static SensorNotes Notes(HousePeriod period, Series series, Nursery.Channels.Unit declared, IReadOnlyList<FoundUnitChange> changes)
    {
        SensorNotes notes = period.Notes;
        foreach (FoundUnitChange change in changes)
        {
            Instant at = period.Frame.Axis.StartOf(change.At);
            DateTimeZone zone = period.Input.Nursery.Exports.FirstOrDefault(e => e.Kind is null && e.Name == series.Source && e.House == series.House)?.Time.Zone ?? period.Frame.Axis.Zone;
            string from = LocalDateTimePattern.GeneralIso.Format(at.InZone(zone).LocalDateTime);
            string mend = change.IsAfter
                ? $"unitChanges = [{{ from = {from}, unit = \"{change.Unit.Code}\" }}]"
                : $"unit = \"{change.Unit.Code}\" and unitChanges = [{{ from = {from}, unit = \"{declared.Code}\" }}]";
            string side = change.IsAfter ? "From" : "Until";
            notes = notes.With(series.Key, $"{side} {Say.Time(at, period.Frame.Axis.Zone)} the values look as if they were in {change.Unit.Code}, not in {declared.Code}: used as they are, and counted as doubtful. If so, write {mend} for this column.");
        }

        return notes;
    }
}
