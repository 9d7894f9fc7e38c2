using System.Collections.Immutable;
using ClimateLens.Science.Clock;

namespace ClimateLens.Science.Tests.Clock;

/// <summary>Stretches, their errors and drifts of days whose offsets are given, against the formulas of the docstrings worked out by hand.</summary>
public sealed class ClockByHandTests
{
    /// <summary>Standard deviation over the median of absolute deviations, and standard error of a median over that of a mean (√(π/2)), for a normal distribution.</summary>
    private const double Mad = 1.4826, Median = 1.2533;

    [Fact]
    public void DayToDay_TwoDays_IsTheirDifferenceOverRootTwo()
    {
        Assert.Equal(Mad * 10 / Math.Sqrt(2), ClockScatter.DayToDayMin(Days(0, 10)), 9);
        Assert.Equal(double.PositiveInfinity, ClockScatter.DayToDayMin(Days(3)));
    }

    /// <summary>One day: a scatter of at least 4 min, and so an error of 2 · 1.2533 · 4.</summary>
    [Fact]
    public void Error_OneDay_IsThatOfTheLeastScatter() => Assert.Equal(2 * Median * 4, Assert.Single(ClockStretches.Of(Days(7))).ErrorMin, 9);

    /// <summary>A minute more each day for 21 days in any order of size: from day to day they scatter by less than 4, but about the median 10 by 1.4826 · 5.</summary>
    [Fact]
    public void Error_SlowDrift_IsByTheScatterAboutTheMedian()
    {
        ClockStretch all = Assert.Single(ClockStretches.Of(Days([.. Enumerable.Range(0, 21).Select(d => (double)d)])));
        Assert.Equal(10, all.OffsetMin);
        Assert.Equal(2 * Median * Mad * 5 / Math.Sqrt(21), all.ErrorMin, 9);
    }

    /// <summary>
    /// Exact days have a scatter of 4, so windows of seven days an error of 2 · 1.2533 · 4 · √(2/7) = 5.36: a step counts from 25 + 2.68 on. The offset before it must not matter.
    /// </summary>
    [Theory]
    [InlineData(27, 0, 1)]
    [InlineData(28.5, 0, 2)]
    [InlineData(27, -13, 1)]
    [InlineData(28.5, -14, 2)]
    [InlineData(-28.5, 14, 2)]
    [InlineData(28.5, 600, 2)]
    public void Cut_ExactDays_IsMadFromTheLeastStepAndHalfItsErrorOn(double step, double offset, int stretches)
        => Assert.Equal(stretches, ClockStretches.Of(Days([.. Enumerable.Range(0, 28).Select(d => offset + (d < 14 ? 0 : step))])).Length);

    /// <summary>
    /// Days 10 min above and below by turns scatter by 1.4826 · 20/√2 = 20.97, windows of seven have an error of 28.1: now one and a half errors, 42.1, are more than
    /// 25 and half an error, 39.0. The medians of the windows beside day 14 are -10 and 10 + step.
    /// </summary>
    [Theory]
    [InlineData(20.5, 1)]
    [InlineData(23.5, 2)]
    public void Cut_ScatteredDays_IsMadFromOneAndAHalfErrorsOn(double step, int stretches)
    {
        ImmutableArray<ClockStretch> found = ClockStretches.Of(Days([.. Enumerable.Range(0, 28).Select(d => (d % 2 == 0 ? 10 : -10) + (d < 14 ? 0 : step))]));
        Assert.Equal(stretches, found.Length);
    }

    [Theory]
    [InlineData(120, 180)] // the greater step first, the smaller one in the part behind it
    [InlineData(60, 180)] // in the part before it
    public void Cut_TwoSteps_FindsBothDays(double second, double third)
    {
        ClockDay[] days = Days([.. Enumerable.Range(0, 60).Select(d => d < 20 ? 0 : d < 40 ? second : third)]);
        ImmutableArray<ClockStretch> found = ClockStretches.Of(days);
        Assert.Equal([(0, 20, 0.0), (20, 20, second), (40, 20, third)], found.Select(s => (s.First, s.Count, s.OffsetMin)));
    }

    /// <summary>
    /// Eleven days that read the same backwards have a median slope of 0. Offsets in order -3 -3 -2 -2 1 1 4 4 5 5 9 have the median 1, distances from it
    /// 0 0 3 3 3 3 4 4 4 4 8 the median 3; days -5 to 5 have squares of 110/49 week². Error: 1.4826 · 3/√(110/49), a quarter more for the median, doubled.
    /// </summary>
    [Fact]
    public void Drift_DaysThatReadTheSameBackwards_IsNoneWithTheErrorOfTheirScatter()
    {
        ClockDrift drift = ClockDrift.Of(Days(5, -3, 1, 4, -2, 9, -2, 4, 1, -3, 5))!.Value;
        Assert.Equal(0, drift.MinPerWeek, 1e-9);
        Assert.Equal(2 * 1.25 * Mad * 3 / Math.Sqrt(110 / 49.0), drift.ErrorMinPerWeek, 1e-6);
    }

    [Fact]
    public void Drift_FewestDays_IsThatOfTheLine()
    {
        ClockDrift drift = ClockDrift.Of(Days([.. Enumerable.Range(0, ClockDrift.FewestDays).Select(d => 5 + (3.0 * d))]))!.Value;
        Assert.Equal(21, drift.MinPerWeek, 1e-6); // 3 min a day
        Assert.Equal(0, drift.ErrorMinPerWeek, 1e-6);
    }

    /// <summary>The latest 200 days count: a clock that ran otherwise for longer before that has this drift now.</summary>
    [Fact]
    public void Drift_ManyDays_IsThatOfTheLatest()
    {
        double[] offsets = [.. Enumerable.Range(0, 500).Select(d => d < 300 ? 7.0 * d : 2100 - (d - 300))];
        Assert.Equal(-7, ClockDrift.Of(Days(offsets))!.Value.MinPerWeek, 1e-6);
    }

    private static ClockDay[] Days(params double[] offsets) => [.. offsets.Select((o, d) => new ClockDay(1.75e9 + (d * 86400.0), o, 10, 11, false))];
}
