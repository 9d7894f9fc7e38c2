namespace ClimateLens.Science.Infection;

/// <summary>A night and the day after it, for <see cref="PowderyMildewLimits"/>; NaN for not known.</summary>
/// <param name="NightHumidityPct">Mean humidity from sunset to sunrise. [%]</param>
/// <param name="DayHumidityPct">Mean humidity from sunrise to sunset. [%]</param>
/// <param name="MeanTemperatureC">Mean temperature of night and day. [°C]</param>
/// <param name="HighestTemperatureC">Highest temperature of the day. [°C]</param>
public readonly record struct PowderyMildewDay(
    double NightHumidityPct, double DayHumidityPct, double MeanTemperatureC, double HighestTemperatureC);
