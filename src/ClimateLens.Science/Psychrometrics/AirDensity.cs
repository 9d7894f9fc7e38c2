using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Mass of moist air in a volume.</summary>
/// <remarks>
/// <para><b>Formula:</b> volume to a mass of dry air <c>v = 0.287042 T(1 + 1.607858 W)/p</c> m³/kg, T in K and p in kPa; density
/// <c>(1 + W)/v</c>. <b>Source:</b> [ASHRAE17] chapter 1, equations 9 and 26.</para>
/// <para><b>Error:</b> ideal gas; 0.1 % at 25 °C in dry air ([ASHRAE17] table 2, CheckRowTests). <b>Check value:</b> 30 °C, 0.02 kg/kg, 95.461 kPa: 1.08412 kg/m³.</para>
/// </remarks>
public static class AirDensity
{
    private const double DryAirGasConstant = 0.287042; // [kPa m³/(kg K)]

    /// <summary>Density from the humidity ratio. [kg/m³]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="ratio">Vapour to dry air, 0 to 6. [kg/kg]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilogramPerCubicMetre FromHumidityRatio(
        Celsius temperature, KilogramPerKilogram ratio, KiloPascal airPressure)
    {
        double kelvin = Limits.Temperature(temperature) + Limits.ZeroCelsiusK;
        double w = Guard.Within(ratio.Value, 0, 6, "kg/kg", nameof(ratio));
        double volume = DryAirGasConstant * kelvin * (1 + (1.607858 * w)) / Limits.AirPressure(airPressure);
        return new((1 + w) / volume);
    }

    /// <summary>Density from relative humidity. [kg/m³]</summary>
    /// <param name="temperature">Air temperature, -100 to 100. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilogramPerCubicMetre FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, KiloPascal airPressure, SaturationCurve? curve = null) =>
        FromHumidityRatio(
            temperature, HumidityRatio.FromRelativeHumidity(temperature, humidity, airPressure, curve), airPressure);
}
