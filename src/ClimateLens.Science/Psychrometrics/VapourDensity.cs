using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Mass of water vapour in a volume of moist air.</summary>
/// <remarks>
/// <para><b>Formula:</b> ideal gas law, <c>AH = 2166.79·e/T</c>, e in kPa and T in K.</para>
/// <para><b>Source:</b> gas constant of water vapour 461.512 J/(kg K), from memory; molar mass 18.01527 g/mol over gas constant 8.314463
/// J/(mol K) makes the factor 2166.74 [CODATA18]. <b>Error:</b> 0.003 % from the factor (VapourDensityTests), that of the ideal gas law
/// (below 0.2 % up to 50 °C, from memory) and that of the saturation curve.</para>
/// </remarks>
public static class VapourDensity
{
    /// <summary>Inverse gas constant of water vapour, 1/(0.461512 kJ/(kg K)), for kPa and g/m³. [g K/(m³ kPa)]</summary>
    public const double GramKelvinPerCubicMetreKPa = 2166.79;

    /// <summary>Absolute humidity from vapour pressure. [g/m³]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="vapourPressure">Vapour pressure, 0 to 105. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static GramPerCubicMetre FromVapourPressure(Celsius temperature, KiloPascal vapourPressure) =>
        new(GramKelvinPerCubicMetreKPa * Limits.VapourPressure(vapourPressure)
            / (Limits.Temperature(temperature) + Limits.ZeroCelsiusK));

    /// <summary>Absolute humidity from relative humidity. [g/m³]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Check value:</b> 17.5 °C and 100 % give 15 g/m³ [NEDERHOFF], within 0.35.</remarks>
    public static GramPerCubicMetre Absolute(
        Celsius temperature, RelativeHumidity humidity, SaturationCurve? curve = null) =>
        FromVapourPressure(temperature, VapourPressure.FromRelativeHumidity(temperature, humidity, curve));

    /// <summary>Humidity deficit: the vapour that air can still take up at its temperature, 0 or more. [g/m³]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>2166.79·VPD/T</c>, the deficit of the air as a density.</remarks>
    public static GramPerCubicMetre Deficit(
        Celsius temperature, RelativeHumidity humidity, SaturationCurve? curve = null) =>
        FromVapourPressure(temperature, VapourPressureDeficit.OfAir(temperature, humidity, curve));
}
