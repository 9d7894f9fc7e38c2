using ClimateLens.Science.Matching;

namespace ClimateLens.Science.Tests.Matching;

/// <summary>
/// A house whose outcome rises by the same at two in the afternoon of every day, watered or not, and stays level at two at night. Stretches start at these two
/// hours only, without covariates each is compared with the first night: so every pseudo-event at the events' hour has exactly that rise.
/// </summary>
public class PlaceboTests
{
    private const int Day = 24, Afternoon = 14, Sets = 30;

    private static readonly MatchDesign Design = new()
    {
        StepHours = 1, BeforeHours = 2, AfterHours = 3, WashoutHours = 3, CandidateHours = 12, Neighbours = 1, Draws = 20, PlaceboSets = Sets,
    };

    [Theory]
    [InlineData(6, 1)]
    [InlineData(-6, 1)]
    [InlineData(0, 0)]
    public void Placebo_SameRiseEveryDay_IsThatBiasAndRejectedUnlessNone(double rise, double rejected)
    {
        MatchedEffect effect = Effect(20, rise, [2, 5, 8, 11, 14]); // five events, the fewest with a range
        Assert.Equal(5, effect.Matched);
        Assert.Equal((Sets, rejected), (effect.Placebo.Sets, effect.Placebo.RejectionRate));
        Assert.Equal(rise, effect.Placebo.MeanEffect, 9);
    }

    /// <summary>Four days without an event cannot stand in for five with one: none is taken twice.</summary>
    [Fact]
    public void Placebo_FewerFreeDaysThanEvents_IsNotTried()
    {
        MatchedEffect effect = Effect(9, 6, [1, 3, 5, 7, 8]);
        Assert.Equal(5, effect.Matched);
        Assert.Equal(PlaceboTest.Untried, effect.Placebo);
    }

    /// <summary>At nine in the morning no stretch starts within two hours: that event has no stand-in, and the other four do not make up for it.</summary>
    [Fact]
    public void Placebo_EventWithoutAStandIn_HasNone()
    {
        MatchedEffect effect = Effect(20, 6, [2, 5, 8, 11], also: (17 * Day) + 9);
        Assert.Equal(5, effect.Matched);
        Assert.Equal(PlaceboTest.Untried, effect.Placebo);
    }

    [Fact]
    public void Placebo_FourEventsOrNoSets_IsNotTried()
    {
        Assert.Equal(PlaceboTest.Untried, Effect(20, 6, [2, 5, 8, 11]).Placebo);
        Assert.Equal(PlaceboTest.Untried, Effect(20, 6, [2, 5, 8, 11, 14], Design with { PlaceboSets = 0 }).Placebo);
    }

    /// <summary>Only the first night is untreated: the events are compared with it, and it has nothing to be compared with itself.</summary>
    [Fact]
    public void Placebo_OneStretchOnly_IsNotTried()
    {
        MatchedEffect effect = Effect(20, 6, [2, 5, 8, 11, 14], Design with { CandidateHours = 24 }, treatedHour: 2);
        Assert.Equal((5, 1), (effect.Matched, effect.Candidates));
        Assert.Equal(PlaceboTest.Untried, effect.Placebo);
    }

    private static MatchedEffect Effect(int days, double rise, int[] eventDays, MatchDesign? design = null, int? also = null, int? treatedHour = null)
    {
        double[] outcome = [.. Enumerable.Range(0, days * Day).Select(step => step % Day is >= Afternoon and < Afternoon + 3 ? rise : 0)];
        List<int> starts = [.. eventDays.Select(day => (day * Day) + Afternoon)];
        starts.AddRange(also is int start ? [start] : []);
        bool[] treated = [.. Enumerable.Range(0, outcome.Length).Select(step => starts.Contains(step) || (step >= Day && step % Day == treatedHour))];
        return EventMatching.Of(outcome, treated, starts, [], design ?? Design);
    }
}
