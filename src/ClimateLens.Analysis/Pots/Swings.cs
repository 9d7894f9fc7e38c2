using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Pots;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>How each bench swung from wet to dry, by <see cref="SwingIndex"/>, and its jumps from one day to the next.</summary>
internal static class Swings
{
    private static readonly Duration ADay = Duration.FromHours(24), About = Duration.FromHours(4);

    /// <summary>Benches with their visits in the period.</summary>
    public static ImmutableArray<PotBenchReport> Benches(PotData data)
        => [.. data.Visits.Keys.Where(b => data.OwnVisits(b).Any()).Select(bench => Bench(data, bench, [.. data.OwnVisits(bench)]))];

    /// <summary>Jumps of two levels or more against the visit nearest to a day before, in time order.</summary>
    public static ImmutableArray<LevelJump> Jumps(PotData data)
    {
        var found =
            from bench in data.Visits.Keys
            from visit in data.OwnVisits(bench)
            let before = DayBefore(data.Visits[bench], visit.At)
            where before.Checks > 0 && Math.Abs(visit.Level - before.Level) >= SwingIndex.Jump
            orderby visit.At, bench
            select new LevelJump(bench, Local(data, before.At), before.Level, Local(data, visit.At), visit.Level);
        return [.. found];
    }

    /// <summary>The visit nearest to a day before a moment, at most four hours off; without checks where there is none.</summary>
    public static BenchVisit DayBefore(IEnumerable<BenchVisit> visits, Instant at)
        => visits.Where(v => Off(v.At, at) <= About).OrderBy(v => Off(v.At, at)).FirstOrDefault();

    private static Duration Off(Instant one, Instant at)
    {
        Duration off = at - ADay - one;
        return off < Duration.Zero ? -off : off;
    }

    private static PotBenchReport Bench(PotData data, string bench, BenchVisit[] visits)
    {
        Interval period = data.House.Input.Period;
        var days = visits.GroupBy(v => data.DayOf(v.At)).ToArray();
        return new(
            bench,
            visits.Sum(v => v.Checks),
            visits.Average(v => v.Level),
            SwingIndex.Of(days.Select(d => (d.Max(v => v.Level), d.Min(v => v.Level)))),
            days.Count(d => d.Count() > 1),
            [.. visits.Select(v => new PotVisit(Local(data, v.At), v.Level, v.Checks))],
            [.. data.Waterings.Of(bench, period.Start, period.End).Where(w => period.Contains(w.Start)).Select(w => Local(data, w.Start))]);
    }

    private static OffsetDateTime Local(PotData data, Instant at) => at.InZone(data.Zone).ToOffsetDateTime();
}
