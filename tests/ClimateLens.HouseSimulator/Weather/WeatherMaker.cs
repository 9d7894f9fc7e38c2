using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Physics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Weather;

/// <summary>
/// Invents weather as it could be in eastern England from late August to November: an autumn trend, warm and cold
/// spells that last days, dull and bright spells, a daily swing that is wide under a clear sky, fog on still clear
/// nights, showers under thick cloud. Every figure is a plausible guess; no station's record stands behind it.
/// </summary>
public static class WeatherMaker
{
    private const int StepMinutes = 10;
    private const double LatitudeDeg = 53.2, LongitudeDeg = -0.6;

    /// <summary>Weather for every minute of a calendar, and one more at its end.</summary>
    public static WeatherPoint[] Make(SimCalendar calendar, ulong seed)
    {
        var sky = new SkyState(seed);
        var minutes = new WeatherPoint[calendar.Minutes + 1];
        SkyStep before = sky.Next(calendar.At(0), LongitudeDeg);
        for (int from = 0; from <= calendar.Minutes; from += StepMinutes)
        {
            SkyStep after = sky.Next(calendar.At(from + StepMinutes), LongitudeDeg);
            for (int minute = from; minute < Math.Min(from + StepMinutes, minutes.Length); minute++)
            {
                minutes[minute] = Between(before, after, (minute - from) / (double)StepMinutes, calendar.At(minute));
            }

            before = after;
        }

        return minutes;
    }

    private static WeatherPoint Between(SkyStep before, SkyStep after, double share, Instant at)
    {
        double temperature = Mix(before.TemperatureC, after.TemperatureC, share);
        double dewPoint = Math.Min(Mix(before.DewPointC, after.DewPointC, share), temperature - 0.1);
        double cloud = Mix(before.Cloud, after.Cloud, share);
        double clear = SunHeight.ClearSkyWm2(SunHeight.Sine(at, LatitudeDeg, LongitudeDeg));
        double pressure = SaturatedAir.PressureKPa(dewPoint);
        double humidity = 100 * pressure / SaturatedAir.PressureKPa(temperature);
        return new WeatherPoint(
            temperature,
            humidity,
            humidity / 100 * SaturatedAir.DensityKgM3(temperature),
            clear * CloudPass(cloud),
            Mix(before.WindMs, after.WindMs, share),
            before.RainMm / StepMinutes,
            temperature - (19 * (1 - (0.85 * cloud))));
    }

    // Share of the clear-sky sun under cloud: steep only when the sky is nearly full (shape after Kasten and Czeplak 1980, from memory).
    private static double CloudPass(double cloud) => 1 - (0.78 * cloud * cloud * cloud * Math.Sqrt(cloud));

    private static double Mix(double a, double b, double share) => a + (share * (b - a));
}
