using ClimateLens.Science.Clock;
using NodaTime;

namespace ClimateLens.Science.Tests.Clock;

/// <summary>Which days of made-up light are judged, and at what level: the rules of docs/science/clock.md one by one. All at 45° N 0°, light by the hour UTC.</summary>
public sealed class SunClockRulesTests
{
    private static readonly Instant April = Instant.FromUtc(2025, 4, 10, 0, 0); // solar noon within two minutes of 12:00

    /// <summary>A faint shelf of 0.75 % whose ends never move, and bright light that begins at another hour each day: the lower the level, the better the days agree.</summary>
    [Theory]
    [InlineData(10, 0.005)]
    [InlineData(15, 0.005)]
    [InlineData(16, 0.01)]
    [InlineData(20, 0.01)]
    [InlineData(30, 0.01)]
    [InlineData(45, 0.08)]
    [InlineData(60, 0.08)]
    public void Days_SteadyFootOfTheLight_AreTakenAtTheLowestLevelOfTheStep(int stepMinutes, double level)
        => Assert.Equal(level, Light((day, hour) => hour >= 8 + (day % 3) && hour < 15 ? 1 : hour is >= 6 and < 18 ? 0.0075 : 0, 12, stepMinutes).Level);

    /// <summary>The other way about: a shelf that begins at another hour each day under bright light whose ends never move.</summary>
    [Theory]
    [InlineData(10, 0.04)]
    [InlineData(15, 0.04)]
    [InlineData(20, 0.04)]
    [InlineData(30, 0.04)]
    [InlineData(60, 0.16)]
    public void Days_SteadyBrightLight_AreTakenAtTheHighestLevelOfTheStep(int stepMinutes, double level)
        => Assert.Equal(level, Light((day, hour) => hour is >= 9 and < 15 ? 1 : hour >= 4 + (day % 3) && hour < 18 ? 0.0075 : 0, 12, stepMinutes).Level);

    /// <summary>
    /// Days agree best at 4 %, but there those with a gap beside a shelf of 3 % are lost, since light changes within it; at 2 % both ends of the gap are full light. A level
    /// that gives 80 % of the other's days will do.
    /// </summary>
    [Theory]
    [InlineData(2, 0.04, 8)]
    [InlineData(3, 0.02, 10)]
    public void Days_LevelThatLosesDays_IsTakenWhileFourInFiveAreLeft(int withGap, double level, int judged)
    {
        LightDays found = Light((day, hour) =>
            day < withGap && hour is > 14.6 and < 15.4 ? double.NaN
            : hour is >= 9 and < 15 ? 1
            : hour is >= 15 and < 17 ? 0.03
            : hour >= 4 + (day % 3) && hour < 18 ? 0.006 : 0, 10);
        Assert.Equal((level, judged), (found.Level, found.Days.Length));
    }

    [Fact]
    public void Days_NothingToCompare_AreAtTheLowestLevelOrNone()
    {
        Assert.Equal(0.005, Light((_, hour) => hour is >= 8 and < 16 ? 1 : 0, 1).Level);
        Assert.Equal(0, Raw((_, _) => 5, 5).Level);
    }

    /// <summary>A day under 5 % of the brightest of three days to either side is left out; beyond these three it is measured by itself.</summary>
    [Theory]
    [InlineData("111111011111", "111111.11111")]
    [InlineData("011111111111", ".11111111111")]
    [InlineData("111111111110", "11111111111.")]
    [InlineData("000001111111", "00...1111111")]
    [InlineData("111111100000", "1111111...00")]
    public void Days_DullAmongBrightOnes_AreLeftOut(string bright, string judged)
    {
        LightDays found = Light((day, hour) => hour is >= 8 and < 16 ? bright[day] == '1' ? 1 : 0.03 : 0, bright.Length);
        Assert.Equal(Enumerable.Range(0, judged.Length).Where(day => judged[day] != '.'), found.Days.Select(Index));
        Assert.Equal(bright.Length, Light((day, hour) => hour is >= 8 and < 16 ? bright[day] == '1' ? 1 : 0.06 : 0, bright.Length).Days.Length);
    }

    /// <summary>A log that begins and ends in full light has half a day at each end.</summary>
    [Fact]
    public void Days_CutInTheirLight_AreLeftOut()
    {
        LightDays found = Light((_, hour) => hour is >= 8 and < 16 ? 1 : 0, 5, from: April + Duration.FromHours(10));
        Assert.Equal([1, 2, 3, 4], found.Days.Select(Index));
    }

    /// <summary>Readings of a whole day so spread that no gap is too long: eight make a day, seven do not.</summary>
    [Theory]
    [InlineData(7, 0)]
    [InlineData(8, 4)]
    public void Days_FewReadings_AreJudgedFromEightOn(int readings, int judged)
    {
        int[] hours = [3, 7, 8, 12, 15, 16, 20, 23];
        Assert.Equal(judged, Light((_, hour) => !hours.Take(readings).Contains((int)hour) ? double.NaN : hour is >= 8 and < 16 ? 1 : 0, 4, 60).Days.Length);
    }

    /// <summary>From 7:50 in the dark to the first reading in the light: half an hour is the longest gap. In full light it is four hours.</summary>
    [Theory]
    [InlineData(8, 8.3, true)] // 7:50 to 8:20
    [InlineData(8, 8.4, false)]
    [InlineData(10.1, 13.9, true)] // 10:00 to 14:00
    [InlineData(10.1, 14.1, false)]
    public void Days_Gap_LeavesThemOutWhenTooLong(double lostFrom, double lostTo, bool judged)
    {
        LightDays found = Light((day, hour) => day == 2 && hour >= lostFrom && hour < lostTo ? double.NaN : hour is >= 8 and < 16 ? 1 : 0, 5);
        Assert.Equal(judged ? [0, 1, 2, 3, 4] : [0, 1, 3, 4], found.Days.Select(Index));
    }

    /// <summary>Dim light that stands still for three hours is a fault, for two it is not; and two equal readings to either side of a gap stand for nothing.</summary>
    [Theory]
    [InlineData(60, 14, 17, false, false)]
    [InlineData(60, 14, 16, false, true)]
    [InlineData(10, 13, 15.9, false, true)] // 13:00 to 15:50
    [InlineData(10, 13, 16, false, false)]
    [InlineData(10, 12, 15.4, true, true)] // 12:00 and 15:20
    public void Days_LightThatStandsStill_LeavesThemOut(int stepMinutes, double from, double to, bool onlyItsEnds, bool judged)
    {
        LightDays found = Raw((day, hour) =>
            hour is < 7 or >= 19 ? 0
            : day != 2 || hour < from || hour > to ? 0.6 + (0.4 * Math.Sin(Math.PI * (hour - 7) / 12))
            : !onlyItsEnds || hour < from + 0.1 || hour > to - 0.1 ? 0.3 : double.NaN, 5, stepMinutes);
        Assert.Equal(judged ? [0, 1, 2, 3, 4] : [0, 1, 3, 4], found.Days.Select(Index));
    }

    /// <summary>Four readings of -100 in the dark put its second percentile 100 below its tenth: within three times that, 300, all is dark.</summary>
    [Theory]
    [InlineData(290, 0)]
    [InlineData(350, 5)]
    public void Days_LightWithinTheNoiseOfTheDark_IsNone(double light, int judged)
        => Assert.Equal(judged, Light((_, hour) => hour is >= 8 and < 16 ? light : hour is >= 2 and < 2.6 ? -100 : 0, 5).Days.Length);

    /// <summary>Half an hour of a sun of twelve hours brings 13 % of noon, ten minutes 4.4 %: seen across a gap the first is no lamp, in one step it would be.</summary>
    [Fact]
    public void Days_DawnAcrossAGap_IsNoSwitch()
    {
        static double Sun(double hour) => Math.Max(0, Math.Sin(Math.PI * (hour - 5.85) / 12.3));
        Assert.Equal([false, false, false, false, false], Light((day, hour) => day == 2 && hour is > 5.9 and < 6.3 ? double.NaN : Sun(hour), 5).Days.Select(d => d.IsSwitched));
        Assert.Equal([false, false, true, false, false], Light((day, hour) => day == 2 && hour < 6.3 ? 0 : Sun(hour), 5).Days.Select(d => d.IsSwitched));
    }

    /// <summary>Neither the unit nor what the sensor reads in the dark matters.</summary>
    [Theory]
    [InlineData(1000, 0)]
    [InlineData(0.001, 0)]
    [InlineData(1, 500)]
    [InlineData(0.01, -3)]
    public void Days_OtherUnitOrDarkReading_AreTheSame(double factor, double dark)
    {
        foreach (Instant from in new[] { LightSeries.June, LightSeries.December })
        {
            LightSeries plain = LightSeries.Sky(from).Changed((at, v) => at.InUtc().Day == 12 && at.InUtc().Hour is >= 10 and < 14 ? 60 : v); // stands still on a day
            LightSeries other = plain.Changed((_, v) => (factor * v) + dark);
            Assert.Equal(plain.Days().Level, other.Days().Level);
            AssertSame(plain.Days().Days, other.Days().Days);
            Assert.NotEmpty(Bright(plain));
            AssertSame(Bright(plain), Bright(other));
        }
    }

    [Fact]
    public void Days_BeyondTheAlmanac_AreNone() => Assert.Empty(Light((_, hour) => hour is >= 8 and < 16 ? 1 : 0, 10, from: Instant.FromUtc(2100, 12, 27, 0, 0)).Days);

    [Fact]
    public void BrightHours_ImpossibleStep_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => SunClock.BrightHours([], [], 0, 0, 53, 0));

    private static void AssertSame(ClockDay[] expected, ClockDay[] actual)
    {
        Assert.Equal(expected.Select(d => (d.NoonUnixSeconds, d.IsSwitched)), actual.Select(d => (d.NoonUnixSeconds, d.IsSwitched)));
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First.OffsetMin, pair.Second.OffsetMin, 1e-6));
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First.LitHours, pair.Second.LitHours, 1e-6));
    }

    private static ClockDay[] Bright(LightSeries series) => SunClock.BrightHours(series.Utc, series.Light, 600, 0, 53.2, -0.6);

    /// <summary>Days of a light that trembles by a millionth from reading to reading, so that none stands still.</summary>
    private static LightDays Light(Func<int, double, double> light, int days, int stepMinutes = 10, Instant? from = null)
        => Raw((day, hour) => light(day, hour) * (1 + (1e-6 * ((hour * 60 / stepMinutes) % 2))), days, stepMinutes, from);

    /// <summary>Days of a light that is a function of the number of the day and the hour of the day.</summary>
    private static LightDays Raw(Func<int, double, double> light, int days, int stepMinutes = 10, Instant? from = null)
        => LightSeries.Of(at => light((int)(at - April).TotalDays, at.InUtc().TimeOfDay.TickOfDay / 3.6e10), from ?? April, days, stepMinutes).Days(45, 0);

    private static int Index(ClockDay day) => (int)Math.Round((day.NoonUnixSeconds - (April.ToUnixTimeTicks() / 1e7)) / 86400 - 0.5);
}
