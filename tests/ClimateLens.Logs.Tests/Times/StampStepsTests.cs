using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>The ranks of what a step costs a reading of a file whose usual step is ten minutes; minutes.</summary>
public sealed class StampStepsTests
{
    private const long Minute = 60_000_000, Usual = 10 * Minute;

    [Theory]
    [InlineData(0)] // a time again
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(15)] // a step and a half
    public void CostOf_UsualStep_IsNothing(int minutes)
    {
        Assert.Equal(0, Cost(minutes * Minute));
        Assert.Equal(0, new StampSteps(Usual, newestFirst: true).CostOf(minutes * Minute, 0));
    }

    [Fact]
    public void CostOf_Steps_RankAsTold()
    {
        // Each is dearer than the one before: gaps by their length, then steps back.
        long[] steps = [15 * Minute, (15 * Minute) + 1, 20 * Minute, 60 * Minute, 24 * 60 * Minute, (-2 * 60 * Minute) - 1, -24 * 60 * Minute];
        float[] costs = [.. steps.Select(Cost)];
        Assert.Equal(costs.Order(), costs);
        Assert.Equal(costs.Length, costs.Distinct().Count());
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-60)] // the clock of autumn
    [InlineData(-120)]
    public void CostOf_SlightStepBack_IsALongGapAndNoMore(int minutes)
    {
        Assert.Equal(Cost(-Minute), Cost(minutes * Minute));
        Assert.InRange(Cost(minutes * Minute), Cost(24 * 60 * Minute), Cost(366L * 24 * 60 * Minute));
    }

    [Fact]
    public void CostOf_StepBack_IsDearerThanAGapOfYears() => Assert.True(Cost(-121 * Minute) > Cost(20L * 366 * 24 * 60 * Minute));

    [Fact]
    public void CostOf_TwiceTheGap_IsOneMore() => Assert.Equal(1, Cost(80 * Minute) - Cost(40 * Minute), 1e-4);

    [Fact]
    public void CostOf_NewestFirst_IsTheOtherWayRound()
    {
        long from = 20_000L * 24 * 60 * Minute; // a day of 2024
        foreach (long step in new[] { 10, 40, 100_000, -10, -130 })
        {
            Assert.Equal(new StampSteps(Usual, newestFirst: false).CostOf(from, from + (step * Minute)), new StampSteps(Usual, newestFirst: true).CostOf(from, from - (step * Minute)));
        }
    }

    private static float Cost(long step) => new StampSteps(Usual, newestFirst: false).CostOf(0, step);
}
