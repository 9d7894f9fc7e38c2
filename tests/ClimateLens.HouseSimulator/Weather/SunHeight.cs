using ClimateLens.HouseSimulator.Numbers;
using NodaTime;

namespace ClimateLens.HouseSimulator.Weather;

/// <summary>
/// A plain sun, good to about half a degree: enough to light a house, and not the one that the product uses.
/// Declination and equation of time by the short Fourier series of Spencer 1971, as NOAA prints them.
/// </summary>
public static class SunHeight
{
    private const double Radian = Math.PI / 180;

    /// <summary>Sine of the sun's height over the horizon; negative at night. [1]</summary>
    public static double Sine(Instant at, double latitudeDeg, double longitudeDeg)
    {
        LocalDateTime utc = at.InUtc().LocalDateTime;
        double g = 2 * Math.PI * (utc.DayOfYear - 1) / 365;
        double declination = 0.006918 - (0.399912 * Portable.Cos(g)) + (0.070257 * Portable.Sin(g))
            - (0.006758 * Portable.Cos(2 * g)) + (0.000907 * Portable.Sin(2 * g));
        double equationMin = 229.18 * (0.000075 + (0.001868 * Portable.Cos(g)) - (0.032077 * Portable.Sin(g))
            - (0.014615 * Portable.Cos(2 * g)) - (0.040849 * Portable.Sin(2 * g)));
        double hours = utc.Hour + (utc.Minute / 60.0) + (equationMin / 60) + (longitudeDeg / 15);
        double hourAngle = 15 * (hours - 12) * Radian;
        return (Portable.Sin(latitudeDeg * Radian) * Portable.Sin(declination))
            + (Portable.Cos(latitudeDeg * Radian) * Portable.Cos(declination) * Portable.Cos(hourAngle));
    }

    /// <summary>Sun on level ground under a clear sky, after Haurwitz 1945 (form from memory). [W/m²]</summary>
    public static double ClearSkyWm2(double sine) => sine <= 0.01 ? 0 : 1098 * sine * Portable.Exp(-0.057 / sine);
}
