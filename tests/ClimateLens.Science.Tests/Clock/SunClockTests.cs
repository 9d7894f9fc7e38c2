using ClimateLens.Science.Clock;
using ClimateLens.TestKit;
using CsCheck;
using NodaTime;

namespace ClimateLens.Science.Tests.Clock;

public sealed class SunClockTests
{
    [Fact]
    public void Days_LightFromThePublishedSunriseToSunset_LieAtThePublishedNoon()
    {
        // [SPA] as quoted by [PVLIB]: 39.742° N 105.179° W, 2015-01-02, sunrise 07:21:55, sunset 16:47:43, transit 12:04:45 MST (UTC-7).
        Instant sunrise = Instant.FromUtc(2015, 1, 2, 14, 21, 55), sunset = Instant.FromUtc(2015, 1, 2, 23, 47, 43), noon = Instant.FromUtc(2015, 1, 2, 19, 4, 45);
        LightSeries box = LightSeries.Of(at => at >= sunrise && at < sunset ? 100 : 0, Instant.FromUtc(2015, 1, 2, 7, 5), 1, stepMinutes: 1);
        ClockDay day = Assert.Single(box.Days(39.742, -105.179).Days);
        Assert.Equal(noon.ToUnixTimeTicks() / 1e7, day.NoonUnixSeconds, 5.0);
        double middle = ((sunrise + ((sunset - sunrise) / 2)) - noon).TotalMinutes;
        Assert.Equal(middle, day.OffsetMin, 1.0); // the step is a minute
        Assert.Equal((sunset - sunrise).TotalHours, day.LitHours, 0.02);
        Assert.Equal((sunset - sunrise).TotalHours, day.DaylightHours, 0.002);
    }

    [Theory]
    [InlineData(5, 4)]
    [InlineData(10, 4)]
    [InlineData(30, 8)]
    [InlineData(60, 15)]
    public void Days_CloudySky_LieNearNoon(int stepMinutes, double tolerance)
    {
        foreach (Instant from in new[] { LightSeries.June, LightSeries.December })
        {
            ClockDay[] days = LightSeries.Sky(from, stepMinutes: stepMinutes).Days().Days;
            Assert.InRange(days.Length, 12, 14);
            Assert.InRange(Median(days), -tolerance, tolerance);
            Assert.DoesNotContain(days, d => d.IsSwitched);
        }
    }

    [Fact]
    public void Days_ClockAheadByAnyWholeSteps_MovesEveryDayByIt()
    {
        ClockDay[] right = LightSeries.Sky(LightSeries.June).Days().Days;
        Gen.Int[-71, 71].Sample(steps =>
        {
            ClockDay[] wrong = LightSeries.Sky(LightSeries.June, aheadMin: _ => steps * 10).Days().Days;
            Assert.InRange(wrong.Length, right.Length - 2, right.Length);
            Assert.Equal(Median(right) + (steps * 10), Median(wrong), 2.0); // the sun's noon moves by some seconds from day to day
        }, iter: 30, threads: 1);
    }

    [Fact]
    public void Days_ReadingsOfIntervals_AreTakenAtTheirMiddle()
    {
        double end = Median(LightSeries.Sky(LightSeries.June, stepMinutes: 60, aheadMin: _ => 30).Days(toMiddleSeconds: -1800).Days);
        double moment = Median(LightSeries.Sky(LightSeries.June, stepMinutes: 60).Days().Days);
        Assert.Equal(moment, end, 0.5);
    }

    [Theory]
    [InlineData(4, 9)] // lamps in the morning
    [InlineData(14, 22)] // lamps in the evening
    public void Days_LampsOnATimer_AreTold(int on, int off)
    {
        LightSeries lit = LightSeries.Sky(LightSeries.December).Changed((at, v) => v + (at.InUtc().Hour >= on && at.InUtc().Hour < off ? 40 : 0));
        Assert.All(lit.Days().Days, d => Assert.True(d.IsSwitched));
    }

    [Fact]
    public void Days_Blackout_IsTold()
    {
        LightSeries dark = LightSeries.Sky(LightSeries.June).Changed((at, v) => at.InUtc().Hour is >= 7 and < 16 ? v : 0);
        Assert.Contains(dark.Days().Days, d => d.IsSwitched);
    }

    [Fact]
    public void Days_GapAtDawn_LeavesTheDayOut_GapAtNoonDoesNot()
    {
        bool IsThird(Instant at) => at.InUtc().Date == new LocalDate(2025, 12, 10);
        double noon = Instant.FromUtc(2025, 12, 10, 12, 0).ToUnixTimeTicks() / 1e7;
        bool Has(LightSeries series) => series.Days().Days.Any(d => Math.Abs(d.NoonUnixSeconds - noon) < 3600);
        LightSeries whole = LightSeries.Sky(LightSeries.December);
        Assert.True(Has(whole));
        Assert.True(Has(whole.Without(at => IsThird(at) && at.InUtc().Hour is 11 or 12)));
        Assert.False(Has(whole.Without(at => IsThird(at) && at.InUtc().Hour == 8)));
    }

    [Fact]
    public void Days_ComputerThatStandsStill_LeavesTheDayOut()
    {
        LightSeries whole = LightSeries.Sky(LightSeries.June);
        LightSeries stuck = whole.Changed((at, v) => at.InUtc().Date == new LocalDate(2025, 6, 5) && at.InUtc().Hour is >= 15 and < 22 ? 41.5 : v);
        Assert.Equal(whole.Days().Days.Length - 1, stuck.Days().Days.Length);
    }

    [Fact]
    public void Days_WithoutDarkOrLightOrWithLongSteps_AreNone()
    {
        Assert.Empty(LightSeries.Of(_ => 5, LightSeries.June, 14).Days().Days);
        Assert.Empty(LightSeries.Of(_ => double.NaN, LightSeries.June, 14).Days().Days);
        Assert.Empty(LightSeries.Sky(LightSeries.June, stepMinutes: 120).Days().Days);
        Assert.Empty(new LightSeries([], [], 10).Days().Days);
        Assert.Empty(LightSeries.Of(new SyntheticSky(78).Wm2, LightSeries.June, 14).Days(78).Days); // the sun stays up
    }

    [Fact]
    public void BrightHours_LampsAtTheEdge_StayWhereTheSunIs()
    {
        LightSeries lit = LightSeries.Sky(LightSeries.June).Changed((at, v) => v + (at.InUtc().Hour is >= 1 and < 6 ? 60 : 0));
        ClockDay[] bright = SunClock.BrightHours(lit.Utc, lit.Light, 600, 0, 53.2, -0.6);
        Assert.True(Median(lit.Days().Days) < -40);
        Assert.InRange(Median(bright), -40, 40);
        Assert.True(bright.Length >= 5);
    }

    [Fact]
    public void Days_ImpossibleArguments_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SunClock.Days([], [], 0, 0, 53, 0));
        Assert.Throws<ArgumentException>(() => SunClock.Days([1], [], 600, 0, 53, 0));
        LightSeries sky = LightSeries.Sky(LightSeries.June, days: 3);
        Assert.Throws<ArgumentOutOfRangeException>(() => sky.Days(latitude: 91));
    }

    private static double Median(ClockDay[] days) => days.Select(d => d.OffsetMin).Order().ElementAt(days.Length / 2);
}
