using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>Mass of water vapour to a mass of dry air; meteorology's mixing ratio. From two bulbs see <see cref="WetBulb"/>.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>W = 0.621945·e/(p - e)</c>; specific humidity <c>q = W/(1 + W)</c>.</para>
/// <para><b>Source:</b> [ASHRAE17] chapter 1, equations 9 and 20. <b>Error:</b> ideal gas: 0.5 % low near saturation (the enhancement
/// factor), and that of the saturation curve.</para>
/// </remarks>
public static class HumidityRatio
{
    /// <summary>Molar mass of water to that of dry air. [1] [ASHRAE17]</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>Humidity ratio from vapour pressure. [kg/kg dry air]</summary>
    /// <param name="vapourPressure">Vapour pressure, 0 to 0.9 of the air pressure. [kPa]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static KilogramPerKilogram FromVapourPressure(KiloPascal vapourPressure, KiloPascal airPressure)
    {
        double p = Limits.AirPressure(airPressure);
        double highest = double.IsNaN(p) ? Limits.HighestVapourPressureKPa : 0.9 * p;
        double e = Guard.Within(vapourPressure.Value, 0, highest, "kPa", nameof(vapourPressure));
        return new(MolarMassRatio * e / (p - e));
    }

    /// <summary>Humidity ratio from relative humidity. [kg/kg dry air]</summary>
    /// <param name="temperature">Air temperature, -100 to 100; the vapour pressure up to 0.9 of the air pressure. [°C]</param>
    /// <param name="humidity">Relative humidity over water, 0 to 100. [%]</param>
    /// <param name="airPressure">Air pressure, 10 to 120. [kPa]</param>
    /// <param name="curve">Saturation curve over water; Buck 1981 e_w1 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Check value:</b> saturated at 25 °C and 101.325 kPa: 0.020173 within 0.5 % ([ASHRAE17] table 2).</remarks>
    public static KilogramPerKilogram FromRelativeHumidity(
        Celsius temperature, RelativeHumidity humidity, KiloPascal airPressure, SaturationCurve? curve = null) =>
        FromVapourPressure(VapourPressure.FromRelativeHumidity(temperature, humidity, curve), airPressure);

    /// <summary>Specific humidity: vapour to moist air. [kg/kg moist air]</summary>
    /// <param name="ratio">Humidity ratio: vapour to dry air, 0 to 6. [kg/kg]</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is impossible.</exception>
    public static KilogramPerKilogram ToSpecificHumidity(KilogramPerKilogram ratio)
    {
        double w = Guard.Within(ratio.Value, 0, 6, "kg/kg", nameof(ratio));
        return new(w / (1 + w));
    }

    /// <summary>Humidity ratio from specific humidity. [kg/kg dry air]</summary>
    /// <param name="specific">Specific humidity: vapour to moist air, 0 to 0.85. [kg/kg]</param>
    /// <exception cref="ArgumentOutOfRangeException">The specific humidity is impossible.</exception>
    public static KilogramPerKilogram FromSpecificHumidity(KilogramPerKilogram specific)
    {
        double q = Guard.Within(specific.Value, 0, 0.85, "kg/kg", nameof(specific));
        return new(q / (1 - q));
    }
}
