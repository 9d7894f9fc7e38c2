using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Leaf;

/// <summary>Temperature at which the sky radiates, as a black body would.</summary>
/// <remarks><b>Range:</b> ground level, -20 to 35 °C, dew points above -38 °C (there the polynomial turns). <b>Error:</b> 3 K for a clear sky, more where the cloud is a guess.</remarks>
public static class SkyTemperature
{
    /// <summary>Sky temperature from air temperature, dew point and cloud. [°C]</summary>
    /// <param name="outside">Air temperature outside, -60 to 60. [°C]</param>
    /// <param name="dewPoint">Dew point outside, -60 up to the air temperature. [°C]</param>
    /// <param name="cloud">Share of the sky that cloud covers, 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> clear <c>ε0 = 0.711 + 0.56 (Td/100) + 0.73 (Td/100)²</c>; with cloud <c>ε = ε0 + 0.84 c (1 - ε0)</c>;
    /// <c>T_sky = T ε^¼</c>.</para>
    /// <para><b>Source:</b> [BERDAHL84] for the clear sky; the cloud term of low cloud; both from memory.</para>
    /// </remarks>
    public static Celsius FromDewPoint(Celsius outside, Celsius dewPoint, double cloud)
    {
        double air = Guard.Within(outside.Value, -60, 60, "°C", nameof(outside));
        double dew = Guard.Within(dewPoint.Value, -60, double.IsNaN(air) ? 60 : air, "°C", nameof(dewPoint)) / 100;
        double covered = Guard.Within(cloud, 0, 1, "(share)");
        double clear = Math.Min(1, 0.711 + (0.56 * dew) + (0.73 * dew * dew));
        double emissivity = clear + (0.84 * covered * (1 - clear));
        return new(((air + Limits.ZeroCelsiusK) * Math.Sqrt(Math.Sqrt(emissivity))) - Limits.ZeroCelsiusK);
    }

    /// <summary>Clear-sky temperature where only the air temperature is known. [°C]</summary>
    /// <param name="outside">Air temperature outside, -60 to 60. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>0.0552 T^1.5</c>, kelvin. <b>Source:</b> [SWINBANK63], from memory.</remarks>
    public static Celsius FromAirTemperature(Celsius outside)
    {
        double kelvin = Guard.Within(outside.Value, -60, 60, "°C", nameof(outside)) + Limits.ZeroCelsiusK;
        return new((0.0552 * kelvin * Math.Sqrt(kelvin)) - Limits.ZeroCelsiusK);
    }
}
