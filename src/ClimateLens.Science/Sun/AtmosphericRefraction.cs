using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Sun;

/// <summary>How much the atmosphere lifts the sun.</summary>
public static class AtmosphericRefraction
{
    private const double DegToRad = Math.PI / 180;

    /// <summary>Refraction to add to the true elevation to get the apparent one. [°]</summary>
    /// <param name="trueElevationDeg">True elevation, -90 to 90; 0 is returned below -1, where the sun is not seen. [°]</param>
    /// <param name="airPressure">Air pressure at the place, 10 to 120. [kPa]</param>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>R = 1.02'/tan(h + 10.3/(h + 5.11))·(p/101.0 kPa)·283/(273 + t)</c>, h in degrees.</para>
    /// <para><b>Source:</b> Saemundsson's formula, [MEEUS98] eq. 16.4. <b>Error:</b> 0.1' in a standard atmosphere (from memory); at the horizon weather moves it by
    /// 10' and more. <b>Check value:</b> 39.8720°, 82 kPa, 11 °C: 0.0163° ([SPA] example; SkyTests).</para>
    /// </remarks>
    public static double Deg(double trueElevationDeg, KiloPascal airPressure, Celsius temperature)
    {
        double h = Guard.Within(trueElevationDeg, -90, 90, "°");
        double p = Psychrometrics.Limits.AirPressure(airPressure);
        double t = Psychrometrics.Limits.Temperature(temperature);
        double minutes = h < -1 ? 0 : 1.02 / Math.Tan((h + (10.3 / (h + 5.11))) * DegToRad);
        return Math.Max(0, minutes / 60) * (p / 101.0) * 283 / (273 + t); // Max: a hair below 0 at the zenith
    }
}
