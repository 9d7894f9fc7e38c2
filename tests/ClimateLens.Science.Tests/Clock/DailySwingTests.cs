using ClimateLens.Science.Clock;
using ClimateLens.Science.Sun;
using CsCheck;
using NodaTime;

namespace ClimateLens.Science.Tests.Clock;

public sealed class DailySwingTests
{
    private const double Longitude = -0.6;

    [Fact]
    public void Of_CosineWithACrestAfterNoon_FindsItWhateverTheTrend()
    {
        Gen.Select(Gen.Double[-600, 600], Gen.Double[2, 8], Gen.Double[-1, 1]).Sample(
            (lag, amplitude, trend) =>
            {
                DailySwing swing = Swing(14, at => 12 + (trend * (at - LightSeries.June).TotalDays) + (amplitude * Math.Cos(Angle(at, lag))))!.Value;
                Assert.Equal(12, swing.Days); // the first and the last have no neighbour
                Assert.Equal(lag, swing.LagMin, 6.0);
                Assert.Equal(amplitude, swing.AmplitudeK, 0.2);
            },
            iter: 50,
            threads: 1);
    }

    [Fact]
    public void Of_FewDaysOrGaps_IsNull()
    {
        Assert.Null(Swing(8, _ => 10));
        Assert.Null(Swing(20, at => at.InUtc().Day % 3 == 0 ? double.NaN : 10));
        Assert.Equal(0, Swing(14, _ => 10)!.Value.AmplitudeK, 1e-9);
    }

    private static double Angle(Instant at, double lagMin)
    {
        LocalDate date = at.InUtc().Date;
        double noon = SunTimes.Of(date.Year, date.Month, date.Day, 53.2, Longitude).SolarNoonUtcMinutes;
        return 2 * Math.PI * ((at.InUtc().TimeOfDay.TickOfDay / 6e8) - noon - lagMin) / 1440;
    }

    private static DailySwing? Swing(int days, Func<Instant, double> temperature)
    {
        LightSeries series = LightSeries.Of(temperature, LightSeries.June, days, 30);
        return DailySwing.Of(series.Utc, series.Light, 1800, 0, 53.2, Longitude);
    }
}
