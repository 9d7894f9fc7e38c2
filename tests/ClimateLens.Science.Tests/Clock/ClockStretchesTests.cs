using System.Collections.Immutable;
using ClimateLens.Science.Clock;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Clock;

public sealed class ClockStretchesTests
{
    [Theory]
    [InlineData(-60, 2)]
    [InlineData(60, 3)]
    [InlineData(60, 14)]
    [InlineData(-720, 26)]
    public void Of_PlantedStepAgainstScatter_IsCutOnItsDay(double step, int at)
    {
        int exact = 0, inside = 0;
        for (ulong seed = 0; seed < 200; seed++)
        {
            ImmutableArray<ClockStretch> found = ClockStretches.Of(Days(28, seed, d => d < at ? 0 : step));
            bool hit = found.Length == 2 && found[1].First == at;
            exact += hit ? 1 : 0;
            inside += hit && Math.Abs(found[1].OffsetMin - step) <= found[1].ErrorMin && Math.Abs(found[0].OffsetMin) <= found[0].ErrorMin ? 1 : 0;
        }

        Assert.InRange(exact, 198, 200);
        Assert.InRange(inside, 180, 200);
    }

    [Fact]
    public void Of_ScatterAlone_IsOneStretch_WithTheTrueMedianInItsErrorNineteenTimesInTwenty()
    {
        int outside = 0;
        for (ulong seed = 0; seed < 200; seed++)
        {
            ClockStretch all = Assert.Single(ClockStretches.Of(Days(14, seed, _ => 3)));
            outside += Math.Abs(all.OffsetMin - 3) > all.ErrorMin ? 1 : 0;
        }

        Assert.InRange(outside, 0, 10);
    }

    [Fact]
    public void Of_SummerTimeOfAYear_IsThreeStretches()
    {
        ImmutableArray<ClockStretch> found = ClockStretches.Of(Days(365, 5, d => d is >= 88 and < 298 ? 60 : 0));
        Assert.Equal([0, 88, 298], found.Select(s => s.First));
    }

    [Fact]
    public void Of_SlowDriftOrSmallStep_IsNotCut()
    {
        Assert.Single(ClockStretches.Of(Days(28, 1, d => d * 10 / 7.0)));
        Assert.Single(ClockStretches.Of(Days(28, 1, d => d < 14 ? 0 : 15)));
        Assert.Single(ClockStretches.Of(Days(15, 1, d => d < 14 ? 0 : 60))); // one day may be anything
    }

    [Fact]
    public void Of_FewDays_AreOneStretchOrNone()
    {
        Assert.Empty(ClockStretches.Of([]));
        Assert.Equal(1, Assert.Single(ClockStretches.Of(Days(1, 1, _ => 7))).Count);
    }

    [Fact]
    public void Drift_OfALine_IsItsSlope_WhateverAFewOddDaysSay()
    {
        for (ulong seed = 0; seed < 50; seed++)
        {
            ClockDay[] days = Days(28, seed, d => d * 12 / 7.0);
            days[3] = days[3] with { OffsetMin = 400 };
            days[20] = days[20] with { OffsetMin = -300 };
            ClockDrift drift = ClockDrift.Of(days)!.Value;
            Assert.InRange(drift.MinPerWeek, 12 - 4, 12 + 4);
            Assert.InRange(drift.ErrorMinPerWeek, 0.5, 6);
        }

        Assert.Null(ClockDrift.Of(Days(ClockDrift.FewestDays - 1, 1, _ => 0)));
    }

    [Fact]
    public void Drift_OfScatterAlone_IsWithinItsErrorNineteenTimesInTwenty()
    {
        int outside = 0;
        for (ulong seed = 0; seed < 200; seed++)
        {
            ClockDrift drift = ClockDrift.Of(Days(14, seed, _ => 0))!.Value;
            outside += Math.Abs(drift.MinPerWeek) > drift.ErrorMinPerWeek ? 1 : 0;
        }

        Assert.InRange(outside, 0, 20);
    }

    /// <summary>Days with normal scatter of six minutes.</summary>
    private static ClockDay[] Days(int count, ulong seed, Func<int, double> offset)
    {
        SeededRandom random = new(seed);
        return [.. Enumerable.Range(0, count).Select(d => new ClockDay(1.75e9 + (d * 86400.0), offset(d) + (6 * random.NextNormal()), 10, 11, false))];
    }
}
