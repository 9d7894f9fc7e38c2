using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Psychrometrics;

/// <summary>What the moist-air functions take for possible; beyond it a scalar throws and a column holds NaN.</summary>
/// <remarks>
/// These limits are wider than the range for which a formula's error is published: inside them a formula still gives a
/// number, outside them the input is a fault of a sensor, not weather. Choice of this project.
/// </remarks>
public static class Limits
{
    /// <summary>Lowest temperature taken. [°C]</summary>
    public const double LowestTemperatureC = -100;

    /// <summary>Highest temperature taken. [°C]</summary>
    public const double HighestTemperatureC = 100;

    /// <summary>Highest relative humidity taken. [%]</summary>
    public const double HighestHumidityPct = 100;

    /// <summary>Lowest air pressure taken: about 15 km above sea level. [kPa]</summary>
    public const double LowestPressureKPa = 10;

    /// <summary>Highest air pressure taken. [kPa]</summary>
    public const double HighestPressureKPa = 120;

    /// <summary>Highest vapour pressure taken: a little over that of boiling water at sea level. [kPa]</summary>
    public const double HighestVapourPressureKPa = 105;

    /// <summary>0 °C on the Kelvin scale. [K]</summary>
    public const double ZeroCelsiusK = 273.15;

    internal static bool IsTemperature(double temperatureC) =>
        temperatureC is >= LowestTemperatureC and <= HighestTemperatureC;

    internal static bool IsHumidity(double relativeHumidityPct) => relativeHumidityPct is >= 0 and <= HighestHumidityPct;

    internal static double Temperature(Celsius temperature) =>
        Guard.Within(temperature.Value, LowestTemperatureC, HighestTemperatureC, "°C", nameof(temperature));

    internal static double Humidity(RelativeHumidity humidity) =>
        Guard.Within(humidity.Percent, 0, HighestHumidityPct, "%", nameof(humidity));

    internal static double HumidityAboveZero(RelativeHumidity humidity) =>
        Guard.AboveUpTo(humidity.Percent, 0, HighestHumidityPct, "%", nameof(humidity));

    internal static double AirPressure(KiloPascal pressure) =>
        Guard.Within(pressure.Value, LowestPressureKPa, HighestPressureKPa, "kPa", nameof(pressure));

    internal static double VapourPressure(KiloPascal vapourPressure) =>
        Guard.Within(vapourPressure.Value, 0, HighestVapourPressureKPa, "kPa", nameof(vapourPressure));

    internal static double VapourPressureAboveZero(KiloPascal vapourPressure) =>
        Guard.AboveUpTo(vapourPressure.Value, 0, HighestVapourPressureKPa, "kPa", nameof(vapourPressure));
}
