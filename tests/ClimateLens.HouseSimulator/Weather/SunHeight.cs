using ClimateLens.HouseSimulator.Numbers;
using NodaTime;

namespace ClimateLens.HouseSimulator.Weather;

/// <summary>A plain sun, good to about half a degree: enough to light a house, and not the one that the product uses.</summary>
public static class SunHeight
{
    private const double Radian = Math.PI / 180;

    /// <summary>Sine of the sun's height over the horizon; negative at night. [1]</summary>
    public static double Sine(Instant at, double latitudeDeg, double longitudeDeg)
    {
        LocalDateTime utc = at.InUtc().LocalDateTime;
        double dayAngle = 2 * Math.PI * (utc.DayOfYear - 81) / 365;
        double declination = 23.45 * Radian * Portable.Sin(dayAngle);
        double equationMin = (9.87 * Portable.Sin(2 * dayAngle)) - (7.53 * Portable.Cos(dayAngle)) - (1.5 * Portable.Sin(dayAngle));
        double hours = utc.Hour + (utc.Minute / 60.0) + (equationMin / 60) + (longitudeDeg / 15);
        double hourAngle = 15 * (hours - 12) * Radian;
        return (Portable.Sin(latitudeDeg * Radian) * Portable.Sin(declination))
            + (Portable.Cos(latitudeDeg * Radian) * Portable.Cos(declination) * Portable.Cos(hourAngle));
    }

    /// <summary>Sun on level ground under a clear sky, after Haurwitz 1945 (form from memory). [W/m²]</summary>
    public static double ClearSkyWm2(double sine) => sine <= 0.01 ? 0 : 1098 * sine * Portable.Exp(-0.057 / sine);
}
