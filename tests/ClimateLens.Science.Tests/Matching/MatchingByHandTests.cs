using ClimateLens.Science.Matching;

namespace ClimateLens.Science.Tests.Matching;

/// <summary>
/// One event at step 20 of thirty hours, one hour before and two after its start, against stretches chosen by a covariate that is known only in the step before a start.
/// </summary>
public class MatchingByHandTests
{
    private const int Steps = 30, Start = 20;

    private static readonly MatchDesign Design = new()
    {
        StepHours = 1, BeforeHours = 1, AfterHours = 2, WashoutHours = 1, CandidateHours = 1, Neighbours = 2, Calliper = 10, LeastKnown = 0, Draws = 20, PlaceboSets = 0,
    };

    /// <summary>
    /// Stretches at 4, 9 and 14 have covariates 0, 6 and 3: mean 3, deviation √6. The event's 4 is 1/√6 from the one at 14, 2/√6 from the one at 9, 4/√6 from the one at
    /// 4. Rises: event (5 + 9)/2 - 1 = 6; at 9 (4 + 6)/2 - 1 = 4; at 14 (0 + 2)/2 - 0 = 1; so the effect is 6 - 2.5.
    /// </summary>
    [Fact]
    public void Effect_TwoNearestOfThree_IsTheEventLessTheirMean()
    {
        MatchedEffect effect = Of(Outcome((3, [0, 2, 2]), (8, [1, 4, 6]), (13, [0, 0, 2]), (19, [1, 5, 9])), Known((4, 0), (9, 6), (14, 3), (Start, 4)));
        MatchedEvent e = Assert.Single(effect.Events);
        Assert.Equal([14, 9], e.Stretches); // nearest first
        Assert.Equal(1.5 / Math.Sqrt(6), e.Distance, 9);
        Assert.Equal(3.5, e.Effect, 9);
        Assert.Equal(3.5, effect.Effect.Value, 9);
        Assert.Equal(3, effect.Candidates);
        CovariateBalance balance = Assert.Single(effect.Balance);
        Assert.Equal(1 / Math.Sqrt(6), balance.Before, 9); // 4 against the mean of all, 3
        Assert.Equal(-0.5 / Math.Sqrt(6), balance.After, 9); // against that of the two chosen, 4.5
        Assert.Equal(-1, effect.FirstLag);
        Assert.Equal([0, 5 - 1 - 1.5, 9 - 1 - 3.5], effect.Curve.Select(p => p.Value)); // at 9: 3 and 5 above its baseline, at 14: 0 and 2
    }

    /// <summary>Three steps a stretch: one that begins three later shares none, one that begins two later does.</summary>
    [Theory]
    [InlineData(12, new[] { 9, 12 })]
    [InlineData(11, new[] { 9 })]
    public void Stretches_ThatFollowEachOther_ShareNoStep(int second, int[] chosen)
        => Assert.Equal(chosen, Of(new double[Steps], Known((4, 50), (9, 6), (second, 7), (Start, 6)), Design with { Calliper = 1 }).Events.Single().Stretches);

    /// <summary>The one at 22 begins within the event's own two hours, the one at 23 after them.</summary>
    [Theory]
    [InlineData(22, 9)]
    [InlineData(23, 23)]
    public void Stretches_WithinTheEvent_AreNoneOfIts(int late, int chosen)
        => Assert.Equal([chosen], Of(new double[Steps], Known((9, 6), (late, 4), (Start, 4)), Design with { Neighbours = 1 }).Events.Single().Stretches);

    /// <summary>Covariates 0 and 2 have a deviation of 1, so 2.5 is half of one away: the calliper itself still counts.</summary>
    [Theory]
    [InlineData(0.5, MatchOutcome.Matched)]
    [InlineData(0.49, MatchOutcome.NothingAlike)]
    public void Calliper_Distance_CountsUpToIt(double calliper, MatchOutcome outcome)
        => Assert.Equal(outcome, Of(new double[Steps], Known((4, 0), (9, 2), (Start, 2.5)), Design with { Calliper = calliper }).Events.Single().Outcome);

    [Fact]
    public void Event_OneOfItsCovariatesNotKnown_IsNotMeasured()
    {
        MatchCovariate known = new("a", CovariateKind.Before, Known((4, 0), (9, 2), (Start, 1))), unknown = new("b", CovariateKind.Before, Known((4, 1), (9, 2)));
        Assert.Equal(MatchOutcome.NotMeasured, EventMatching.Of(new double[Steps], Treated(), [Start], [known, unknown], Design).Events.Single().Outcome);
    }

    /// <summary>All stretches start at ten; an event at nine or eleven is a chord of 2 sin(π/24) from them, in hours of π/12, never negative.</summary>
    [Theory]
    [InlineData(9)]
    [InlineData(11)]
    public void Balance_Hour_IsTheDistanceInHours(double hour)
    {
        double[] hours = [.. Enumerable.Range(0, Steps).Select(step => step == Start ? hour : 10)];
        CovariateBalance balance = EventMatching.Of(new double[Steps], Treated(), [Start], [new("hour", CovariateKind.HourOfDay, hours)], Design).Balance.Single();
        double expected = 2 * Math.Sin(Math.PI / 24) / (Math.PI / 12);
        Assert.Equal(expected, balance.Before, 9);
        Assert.Equal(expected, balance.After, 9);
    }

    /// <summary>Starts from 1 to 8 have a step before and two after them within ten.</summary>
    [Fact]
    public void Candidates_WholeLog_AreAllStartsWithRoom() => Assert.Equal(8, EventMatching.Of(new double[10], new bool[10], [], [], Design).Candidates);

    [Theory]
    [InlineData(new[] { -1 })]
    [InlineData(new[] { Steps })]
    [InlineData(new[] { 4, 4 })]
    [InlineData(new[] { 9, 4 })]
    public void Starts_NoStepsOrOutOfOrder_Throw(int[] starts)
        => Assert.Throws<ArgumentException>(() => EventMatching.Of(new double[Steps], Treated(), starts, [], Design));

    [Theory]
    [InlineData(Steps - 1)]
    [InlineData(Steps + 1)]
    public void Covariate_OfAnotherLength_Throws(int length) => Assert.Throws<ArgumentException>(
        () => EventMatching.Of(new double[Steps], Treated(), [Start], [new("a", CovariateKind.Before, new double[length])], Design));

    [Fact]
    public void CandidateHours_NotGiven_AreHalfAnHourOrAStep()
    {
        Assert.Equal(0.5, new MatchDesign { StepHours = 0.25 }.CandidateHours);
        Assert.Equal(1, new MatchDesign { StepHours = 1 }.CandidateHours);
        Assert.Equal(3, new MatchDesign { StepHours = 1, CandidateHours = 3 }.CandidateHours);
    }

    [Fact]
    public void Design_Impossible_Throws()
    {
        MatchDesign wide = Design with { BeforeHours = 2, AfterHours = 2, WashoutHours = 30, CandidateHours = 2 };
        MatchDesign[] impossible =
        [
            wide with { StepHours = 0 }, wide with { StepHours = 1.01 }, wide with { StepHours = double.NaN },
            wide with { BeforeHours = 0.9 }, wide with { BeforeHours = 25 }, wide with { BeforeHours = double.NaN },
            wide with { AfterHours = 0.9 }, wide with { AfterHours = 49 }, wide with { AfterHours = double.NaN },
            wide with { WashoutHours = 1.9 }, wide with { WashoutHours = 241 }, wide with { WashoutHours = double.NaN },
            wide with { Neighbours = 0 }, wide with { Neighbours = 101 },
            wide with { Calliper = 0 }, wide with { Calliper = 101 }, wide with { Calliper = double.NaN },
            wide with { CandidateHours = 0.9 }, wide with { CandidateHours = 25 }, wide with { CandidateHours = double.NaN },
            wide with { LeastKnown = -0.1 }, wide with { LeastKnown = 1.1 }, wide with { LeastKnown = double.NaN },
            wide with { Draws = 19 }, wide with { Draws = 1_000_001 },
            wide with { PlaceboSets = -1 }, wide with { PlaceboSets = 100_001 },
        ];
        Assert.All(impossible, design => Assert.Throws<ArgumentOutOfRangeException>(design.Check));
        wide.Check();
    }

    private static MatchedEffect Of(double[] outcome, double[] before, MatchDesign? design = null)
        => EventMatching.Of(outcome, Treated(), [Start], [new("a", CovariateKind.Before, before)], design ?? Design);

    private static bool[] Treated() => [.. Enumerable.Range(0, Steps).Select(step => step == Start)];

    /// <summary>A covariate that is known only in the step before these starts.</summary>
    private static double[] Known(params (int Start, double Value)[] known)
    {
        double[] values = new double[Steps];
        Array.Fill(values, double.NaN);
        foreach ((int start, double value) in known)
        {
            values[start - 1] = value;
        }

        return values;
    }

    private static double[] Outcome(params (int From, double[] Values)[] parts)
    {
        double[] outcome = new double[Steps];
        foreach ((int from, double[] values) in parts)
        {
            values.CopyTo(outcome, from);
        }

        return outcome;
    }
}
