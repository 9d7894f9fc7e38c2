using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Vapour pressure of air that can hold no more vapour, with the default curves.</summary>
/// <remarks>
/// For another curve ask it directly: <c>MagnusForm.Wmo8Water.VapourPressure(t)</c>, <c>HylandWexler.Water.Slope(t)</c>.
/// </remarks>
public static class SaturationVapourPressure
{
    /// <summary>Saturation vapour pressure over liquid water. [kPa]</summary>
    /// <param name="temperature">Temperature, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>0.61121·exp(17.502 t/(240.97 + t))</c>. <b>Source:</b> [BUCK81], e_w1.</para>
    /// <para><b>Error:</b> at most 0.07 % from 10 to 35 °C, 0.16 % from 0 to 50 °C, 0.20 % from -20 to 50 °C, against
    /// Hyland-Wexler (CurveErrorTests).</para>
    /// </remarks>
    public static KiloPascal OverWater(Celsius temperature) => SaturationCurve.Water.VapourPressure(temperature);

    /// <summary>Saturation vapour pressure over ice. [kPa]</summary>
    /// <param name="temperature">Temperature, -100 to 100; meaningful up to 0. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>0.61115·exp(22.452 t/(272.55 + t))</c>. <b>Source:</b> [BUCK81], e_i2, coefficients from memory.</para>
    /// <para><b>Error:</b> at most 0.02 % from -20 to 0 °C, against Hyland-Wexler (CurveErrorTests).</para>
    /// </remarks>
    public static KiloPascal OverIce(Celsius temperature) => SaturationCurve.Ice.VapourPressure(temperature);

    /// <summary>Slope of the saturation vapour pressure over liquid water. [kPa/K]</summary>
    /// <param name="temperature">Temperature, -100 to 100. [°C]</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is impossible.</exception>
    /// <remarks>
    /// <para><b>Formula:</b> <c>es·B·C/(C + t)²</c>, the derivative of [BUCK81] e_w1.</para>
    /// <para><b>Error:</b> at most 0.6 % from 0 to 50 °C, against Hyland-Wexler (CurveErrorTests).</para>
    /// </remarks>
    public static KiloPascalPerKelvin Slope(Celsius temperature) => SaturationCurve.Water.Slope(temperature);
}
