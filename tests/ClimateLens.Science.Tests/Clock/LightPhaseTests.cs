using ClimateLens.Science.Clock;
using ClimateLens.Science.Sun;

namespace ClimateLens.Science.Tests.Clock;

/// <summary>Where light lies that is switched on and off by the hour, and curves by their index.</summary>
public sealed class LightPhaseTests
{
    /// <summary>From a tenth of the day's light on a reading counts in full, whatever the unit and the reading in the dark: half light is no half day.</summary>
    [Theory]
    [InlineData(1, 0.5, 0)]
    [InlineData(0.01, 0.005, 0)]
    [InlineData(1000, 500, 0)]
    [InlineData(11, 10.5, 10)]
    [InlineData(-9, -9.5, -10)]
    public void Offset_BrightMorningAndDullAfternoon_IsTheMiddleOfBoth(double bright, double dull, double dark)
        => Assert.Equal(Middle(8, 16), Offset(hour => hour is >= 8 and < 12 ? bright : hour is >= 12 and < 16 ? dull : dark)!.Value, 1.0);

    [Theory]
    [InlineData(2, 6)]
    [InlineData(1, 21)] // 20 h: the mean direction still has a length of 0.19
    public void Offset_OneSpellOfLight_IsItsMiddle(double on, double off)
        => Assert.Equal(Middle(on, off), Offset(hour => hour >= on && hour < off ? 7 : 0)!.Value, 1.0);

    /// <summary>
    /// Two hours of dark each at 1 and 14 o'clock, 195° apart, leave a mean direction of 2 |1 + e^(i195°)|/20 = 0.026: less than the 0.08 of a day of 22 h.
    /// </summary>
    [Fact]
    public void Offset_LightWithoutADirection_IsNotKnown()
    {
        Assert.Null(Offset(hour => hour < 2 || hour is >= 13 and < 15 ? 0 : 7));
        Assert.Null(Offset(_ => 7));
        Assert.Null(Offset(_ => double.NaN));
    }

    [Fact]
    public void IndexOf_Moment_IsTheFirstReadingAtOrAfterIt()
    {
        LightCurve curve = LightCurve.Of([0, 60_000_000, 180_000_000, 240_000_000], [5, double.NaN, 6, 7], 60, 30);
        Assert.Equal([0.5, 3.5, 4.5], curve.Minutes); // the middle of what each stamp labels; the missing one is gone
        double[] moments = [0, 0.5, 0.6, 3.5, 3.6, 4.5, 4.6];
        Assert.Equal([0, 0, 1, 1, 2, 2, 3], moments.Select(curve.IndexOf));
    }

    /// <summary>Middle of readings every ten minutes from one hour to before another, less the mean solar noon of the days. [min]</summary>
    private static double Middle(double on, double off)
        => (30 * (on + off)) - 5 - Enumerable.Range(2, 10).Average(day => SunTimes.Of(2025, 6, day, 53.2, 0).SolarNoonUtcMinutes);

    private static double? Offset(Func<double, double> lightByHour)
    {
        LightSeries series = LightSeries.Of(at => lightByHour(at.InUtc().TimeOfDay.TickOfDay / 3.6e10), LightSeries.June, 10);
        return LightPhase.OffsetMin(LightCurve.Of(series.Utc, series.Light, 600, 0), new SunNoons(53.2, 0));
    }
}
