namespace ClimateLens.HouseSimulator.Weather;

/// <summary>Outside air at one minute.</summary>
/// <param name="TemperatureC">Air temperature. [°C]</param>
/// <param name="HumidityPct">Relative humidity. [%]</param>
/// <param name="VapourKgM3">Vapour density. [kg/m³]</param>
/// <param name="RadiationWm2">Sun on level ground. [W/m²]</param>
/// <param name="WindMs">Wind speed. [m/s]</param>
/// <param name="RainMm">Rain in this minute. [mm]</param>
/// <param name="SkyC">Radiating temperature of the sky. [°C]</param>
public readonly record struct WeatherPoint(
    double TemperatureC, double HumidityPct, double VapourKgM3, double RadiationWm2, double WindMs, double RainMm, double SkyC);
