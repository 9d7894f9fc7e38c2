using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Matching;

/// <summary>What events do to an outcome, without a model: each against the most similar stretches of the same house without one.</summary>
/// <remarks>
/// <para><b>Formula:</b> effect of one event = (mean after - mean before) of the event, less the mean of the same over its k nearest untreated stretches; distance =
/// root mean square over the covariates of their difference in standard deviations. The hour before the start is the baseline and so no part of the effect.</para>
/// <para><b>Source:</b> nearest neighbours within a calliper [RR85], [STUART10]; difference of differences [AP09]; range by blocks of days [KUNSCH89]; all from
/// memory. Distance, calliper, k and hours are choices of this project (<see cref="MatchDesign"/>).</para>
/// <para><b>Range:</b> compares only with what happened in this house: a grower who waters every day at three leaves no three o'clock to compare with, and then nothing is told.</para>
/// <para><b>Error:</b> alike in the covariates is not alike in all: the reason for watering that day (a hot morning, dry pots) may itself move the outcome. The placebo test shows
/// what part of that any day has, not what only watered days have. The range held the truth in 183
    /// of 200 made-up houses whose covariates tell all; matching itself is not repeated within the draws. The placebo test's rate shows it.</para>
/// <para><b>Check value:</b> 78 to 88 with an event, 77 to 81 without: the effect is 6.</para>
/// </remarks>
public static class EventMatching
{
    /// <summary>Effect of events on an outcome.</summary>
    /// <param name="outcome">One value a step, in any unit; NaN for not known.</param>
    /// <param name="treated">Whether any treatment ran in a step.</param>
    /// <param name="starts">Steps at which events start, in order of time; those that belong together joined.</param>
    /// <param name="covariates">In what stretches should be alike.</param>
    /// <param name="design">How to match.</param>
    /// <exception cref="ArgumentException">Columns differ in length, or a start is no step or out of order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The design is impossible.</exception>
    public static MatchedEffect Of(
        ReadOnlyMemory<double> outcome, ReadOnlySpan<bool> treated, IReadOnlyList<int> starts, IReadOnlyList<MatchCovariate> covariates, MatchDesign design)
    {
        Check(outcome.Length, treated.Length, starts, covariates, design);
        var stretches = new Stretches(outcome, treated, design);
        List<int> pool = Untreated(stretches, outcome.Length, design);
        var table = new CovariateTable(covariates, design, pool);
        var nearest = new NearestStretches(stretches, table, pool, design);
        List<MatchedEvent> events = [.. starts.Select(start => Matched(stretches, nearest, start))];
        List<MatchedEvent> matched = [.. events.Where(e => e.Outcome == MatchOutcome.Matched)];
        var blocks = new DayBlocks(outcome.Length, design);
        return new(
            blocks.Ranges(matched, 1, (start, _) => stretches.Rise(start), design.Draws, new SeededRandom(design.Seed))[0],
            blocks.Ranges(matched, stretches.Length, (start, point) => stretches.RiseAt(start, point - stretches.Before), design.Draws, new SeededRandom(design.Seed)),
            -stretches.Before,
            events,
            nearest.Candidates.Count,
            BalanceOf.All(table, nearest, matched),
            table.LeftOut,
            Placebo.Of(nearest, stretches, blocks, matched, design));
    }

    private static void Check(
        int steps, int treated, IReadOnlyList<int> starts, IReadOnlyList<MatchCovariate> covariates, MatchDesign design)
    {
        design.Check();
        Guard.SameLength(steps, treated);
        foreach (MatchCovariate covariate in covariates)
        {
            Guard.SameLength(steps, covariate.Values.Length, covariate.Name);
        }

        for (int i = 0; i < starts.Count; i++)
        {
            if (starts[i] < 0 || starts[i] >= steps || (i > 0 && starts[i] <= starts[i - 1]))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Start {starts[i]} is no step of {steps}, or does not follow the one before."), nameof(starts));
            }
        }
    }

    private static List<int> Untreated(Stretches stretches, int steps, MatchDesign design)
    {
        List<int> pool = [];
        for (int start = stretches.Before; start + stretches.After <= steps; start += design.Steps(design.CandidateHours))
        {
            if (stretches.IsUntreated(start) && stretches.IsMeasured(start))
            {
                pool.Add(start);
            }
        }

        return pool;
    }

    private static MatchedEvent Matched(Stretches stretches, NearestStretches nearest, int start) =>
        !stretches.IsMeasured(start) ? Unmatched(start, MatchOutcome.NotMeasured)
        : stretches.FollowsTreatment(start) ? Unmatched(start, MatchOutcome.FollowsAnother)
        : nearest.Match(start);

    private static MatchedEvent Unmatched(int start, MatchOutcome why) => new(start, why, [], double.NaN, double.NaN);
}
