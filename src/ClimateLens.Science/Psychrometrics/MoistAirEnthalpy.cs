using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Heat content of moist air to a mass of dry air, counted from dry air and liquid water at 0 °C.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>h = 1.006 t + W(2501 + 1.86 t)</c>. <b>Source:</b> [ASHRAE17] chapter 1, eq. 30.</para>
/// <para><b>Error:</b> below 1 % of the saturated-air table from -50 to 80 °C ([ASHRAE17] table 2; CheckRowTests).</para>
/// <para><b>Check value:</b> 30 °C and 0.02 kg/kg give 81.316 kJ/kg.</para>
/// </remarks>
public static class MoistAirEnthalpy
{
    /// <summary>Enthalpy from the humidity ratio. [kJ/kg dry air]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="ratio">Vapour to dry air, 0 to 6. [kg/kg]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilojoulePerKilogram FromHumidityRatio(Celsius temperature, KilogramPerKilogram ratio)
    {
        double t = Limits.Temperature(temperature);
        double w = Guard.Within(ratio.Value, 0, 6, "kg/kg", nameof(ratio));
        return new((1.006 * t) + (w * (2501 + (1.86 * t))));
    }

    /// <summary>Enthalpy from relative humidity. [kJ/kg dry air]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilojoulePerKilogram FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, KiloPascal airPressure, SaturationCurve? curve = null) =>
        FromHumidityRatio(temperature, HumidityRatio.FromRelativeHumidity(temperature, humidity, airPressure, curve));
}
