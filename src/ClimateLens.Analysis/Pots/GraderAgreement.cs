using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Agreement;
using ClimateLens.Science.Pots;
using NodaTime;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Pots;

/// <summary>People held against each other on pots that both graded within an hour, and against weights.</summary>
/// <remarks>
/// <b>Rule:</b> a check is paired with the other person's nearest one of the same bench and pot, each used once. A round is a day's morning or afternoon. Checks of the weeks before the
/// period count too, since pairs are few. Method and error: docs/science/agreement.md.
/// </remarks>
internal static class GraderAgreement
{
    private static readonly Duration Together = Duration.FromHours(1);
    private const double Confidence = 0.9;

    /// <summary>The agreement of all people who signed.</summary>
    public static AgreementReport Of(PotData data)
    {
        PotCheck[] signed = [.. data.All.Where(c => c.Grader.Length > 0 && c.Level is not null)];
        string[] graders = [.. signed.Select(c => c.Grader).Distinct().Order(StringComparer.Ordinal)];
        GraderPair[] pairs =
        [
            .. graders.SelectMany((one, i) => graders.Skip(i + 1).Select(other => Pair(data, signed, one, other)))
                .OfType<GraderPair>()
                .OrderByDescending(p => p.Pots).ThenBy(p => p.First, StringComparer.Ordinal).ThenBy(p => p.Second, StringComparer.Ordinal),
        ];
        int possible = graders.Length * (graders.Length - 1) / 2;
        int? needed = pairs.Length < possible ? Math.Max(SideBySideRound.Pots(SideBySideRound.AssumedDeviation), Lacking(pairs) ?? 0) : Lacking(pairs);
        return new([.. graders], [.. pairs], Weighed(signed), needed);
    }

    private static int? Lacking(GraderPair[] pairs) => pairs.Where(p => p.Pots < p.PotsNeeded).Select(p => (int?)p.PotsNeeded).Max();

    private static GraderPair? Pair(PotData data, PotCheck[] signed, string one, string other)
    {
        (PotCheck First, PotCheck Second)[] both = [.. Matched(signed, one, other)];
        if (both.Length == 0)
        {
            return null;
        }

        (int First, int Second, int Round)[] levels = [.. both.Select(p => (MoistureScale.HalfLevelOf(p.First.Level!.Value), MoistureScale.HalfLevelOf(p.Second.Level!.Value), RoundOf(data, p.First.At)))];
        PairedDifference difference = PairedDifference.Of([.. both.Select(p => p.First.Level!.Value)], [.. both.Select(p => p.Second.Level!.Value)]);
        double deviation = difference.Count >= GroupedKappa.FewestPairs && difference.Deviation > 0 ? difference.Deviation : SideBySideRound.AssumedDeviation;
        return new(
            one,
            other,
            both.Length,
            levels.Select(l => l.Round).Distinct().Count(),
            Known(GroupedKappa.Of(MoistureScale.HalfLevels, levels, KappaWeights.Linear, Confidence)),
            Known(GroupedKappa.Of(MoistureScale.HalfLevels, levels, KappaWeights.Quadratic, Confidence)),
            Known(difference.Bias),
            double.IsFinite(difference.Deviation) ? difference.Deviation : null,
            SideBySideRound.Pots(deviation),
            [.. levels.GroupBy(l => (l.First, l.Second)).OrderBy(g => g.Key).Select(g => new LevelPair(LevelOf(g.Key.First), LevelOf(g.Key.Second), g.Count()))]);
    }

    private static IEnumerable<(PotCheck, PotCheck)> Matched(PotCheck[] signed, string one, string other)
    {
        foreach (var pot in signed.Where(c => c.Pot.Length > 0 && (c.Grader == one || c.Grader == other)).GroupBy(c => (c.Bench, c.Pot)))
        {
            List<PotCheck> left = [.. pot.Where(c => c.Grader == other)];
            foreach (PotCheck check in pot.Where(c => c.Grader == one))
            {
                if (left.Where(c => Apart(c, check) <= Together).MinBy(c => Apart(c, check)) is { } match)
                {
                    left.Remove(match);
                    yield return (check, match);
                }
            }
        }
    }

    private static Duration Apart(PotCheck one, PotCheck other) => one.At > other.At ? one.At - other.At : other.At - one.At;

    private static int RoundOf(PotData data, Instant at)
    {
        LocalDateTime local = at.InZone(data.Zone).LocalDateTime;
        return (2 * Period.DaysBetween(new LocalDate(2000, 1, 1), local.Date)) + (local.Hour < 12 ? 0 : 1);
    }

    private static ImmutableArray<GraderAgainstWeights> Weighed(PotCheck[] signed) =>
    [
        .. signed.Where(c => c.ByWeight is not null)
            .GroupBy(c => c.Grader)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new GraderAgainstWeights(g.Key, g.Count(), Known(PairedDifference.Of([.. g.Select(c => c.Level!.Value)], [.. g.Select(c => c.ByWeight!.Value)]).Bias))),
    ];

    private static Estimate? Known(Interval interval) => double.IsFinite(interval.Low + interval.High) ? new(interval.Value, interval.Low, interval.High) : null;

    private static double LevelOf(int half) => 1 + (half / 2.0);
}
