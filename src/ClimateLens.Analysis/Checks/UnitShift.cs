using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels.Changes;
using ClimateLens.Nursery.Languages;
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
    /// <summary>The places where a series changes so.</summary>
    public static IReadOnlyList<FoundUnitChange> Find(HousePeriod period, Series series)
    {
        TimeAxis axis = period.Frame.Axis;
        long[] stamps = [.. Enumerable.Range(0, axis.Count).Select(i => axis.StartOf(i).ToUnixTimeTicks() / 10)];
        return UnitChangeFinder.Find(stamps, period.Frame.Values(series.Key).AsSpan(), series.Channel, Declared(period, series));
    }

    /// <summary>Between two changes, before the first and after the last: in doubt where a change says so of that side.</summary>
    public static QualityFlag[] Flags(HousePeriod period, Series series, IReadOnlyList<FoundUnitChange> changes)
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

    /// <summary>Each change as a sentence, with the mend.</summary>
    public static IEnumerable<string> Notes(HousePeriod period, Series series, IReadOnlyList<FoundUnitChange> changes)
    {
        string declared = Declared(period, series).Code;
        foreach (FoundUnitChange change in changes)
        {
            Instant at = period.Frame.Axis.StartOf(change.At);
            DateTimeZone zone = period.Input.Nursery.Exports.FirstOrDefault(e => e.Kind is null && e.Name == series.Source && e.House == series.House)?.Time.Zone ?? period.Frame.Axis.Zone;
            string from = LocalDateTimePattern.GeneralIso.Format(at.InZone(zone).LocalDateTime);
            string mend = change.IsAfter
                ? Phrase.Of($"unitChanges = [{{ from = {from}, unit = \"{change.Unit.Code}\" }}]")
                : Phrase.Of($"unit = \"{change.Unit.Code}\" and unitChanges = [{{ from = {from}, unit = \"{declared}\" }}]");
            string side = change.IsAfter ? Phrase.Of("From") : Phrase.Of("Until");
            yield return Phrase.Of($"{side} {Say.Time(at, period.Frame.Axis.Zone)} the values look as if they were in {change.Unit.Code}, not in {declared}: used as they are, and counted as doubtful. If so, write {mend} for this column.");
        }
    }

    private static Nursery.Channels.Unit Declared(HousePeriod period, Series series)
        => ColumnOf.UnitOf(ColumnOf.Find(period.Input, series.House, series.Source, series.Channel.Name, series.Sensor), series.Channel);
}
