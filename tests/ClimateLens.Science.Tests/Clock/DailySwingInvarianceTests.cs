using ClimateLens.Science.Clock;
using ClimateLens.Science.Sun;
using NodaTime;

namespace ClimateLens.Science.Tests.Clock;

/// <summary>What must not move the wave, and which days count as whole.</summary>
public sealed class DailySwingInvarianceTests
{
    /// <summary>By solar time: a crest that many minutes after noon is found at every longitude.</summary>
    [Theory]
    [InlineData(100)]
    [InlineData(-75)]
    [InlineData(175)]
    [InlineData(-175)]
    public void Of_AnyLongitude_FindsTheCrestBySolarTime(double longitude)
    {
        DailySwing swing = Swing(at => 12 + (5 * Math.Cos(Angle(at, longitude, 150))), longitude)!.Value;
        Assert.Equal(150, swing.LagMin, 3.0);
        Assert.Equal(5, swing.AmplitudeK, 0.05);
    }

    /// <summary>
    /// Four hours around midday missing every day, so a mean or a trend that is left in would look like a wave: another level and any steady trend change nothing.
    /// </summary>
    [Theory]
    [InlineData(300, 0)]
    [InlineData(-40, 2)]
    [InlineData(0, -3)]
    public void Of_OtherLevelOrTrend_IsTheSameWave(double level, double trendKPerDay)
    {
        // Days are told by mean solar time, so at 0° they run from 0:00 to 23:30 UTC; 10:00 to 13:30 lies in their middle.
        static bool Lost(Instant at) => at.InUtc().Hour is >= 10 and < 14;
        static double Plain(Instant at) => Lost(at) ? double.NaN : 12 + (4 * Math.Cos(Angle(at, 0, 150)));
        DailySwing plain = Swing(Plain, 0)!.Value;
        DailySwing other = Swing(at => Plain(at) + level + (trendKPerDay * (at - LightSeries.June).TotalDays), 0)!.Value;
        Assert.Equal(plain.LagMin, other.LagMin, 1e-6);
        Assert.Equal(plain.AmplitudeK, other.AmplitudeK, 1e-8);
    }

    /// <summary>Nine whole days have seven with both neighbours: the fewest that are judged.</summary>
    [Fact]
    public void Of_NineDays_AreJudgedBySeven() => Assert.Equal(7, Swing(_ => 10, 0, days: 9)!.Value.Days);

    /// <summary>A day needs 80 % of its readings and 18: 38.4 of 48, 19.2 of 24, 18 of 18; twelve never do.</summary>
    [Theory]
    [InlineData(30, 39, true)]
    [InlineData(30, 38, false)]
    [InlineData(60, 20, true)]
    [InlineData(60, 19, false)]
    [InlineData(80, 18, true)]
    [InlineData(80, 17, false)]
    [InlineData(120, 12, false)]
    public void Of_DaysWithThatManyReadings_AreWholeOrNot(int stepMinutes, int readings, bool whole)
    {
        DailySwing? swing = Swing(at => at.InUtc().TimeOfDay.TickOfDay / (6e8 * stepMinutes) < readings ? 10 : double.NaN, 0, 14, stepMinutes);
        Assert.Equal(whole ? 12 : null, swing?.Days);
    }

    [Fact]
    public void Of_ImpossibleStep_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => DailySwing.Of([], [], 0, 0, 53, 0));

    private static double Angle(Instant at, double longitude, double lagMin)
    {
        LocalDate date = at.InUtc().Date;
        double noon = SunTimes.Of(date.Year, date.Month, date.Day, 53.2, longitude).SolarNoonUtcMinutes;
        return 2 * Math.PI * ((at.InUtc().TimeOfDay.TickOfDay / 6e8) - noon - lagMin) / 1440;
    }

    private static DailySwing? Swing(Func<Instant, double> temperature, double longitude, int days = 14, int stepMinutes = 30)
    {
        LightSeries series = LightSeries.Of(temperature, LightSeries.June, days, stepMinutes);
        return DailySwing.Of(series.Utc, series.Light, stepMinutes * 60, 0, 53.2, longitude);
    }
}
