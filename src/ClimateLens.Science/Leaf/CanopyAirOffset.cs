namespace ClimateLens.Science.Leaf;

/// <summary>How the air among the leaves differs from the main sensor at one moment, and how sure that is.</summary>
/// <param name="TemperatureK">Air among the leaves minus main sensor. [K]</param>
/// <param name="TemperatureErrorK">Its standard error. [K]</param>
/// <param name="HumidityPct">Relative humidity among the leaves minus main sensor. [points of %]</param>
/// <param name="HumidityErrorPct">Its standard error. [points of %]</param>
public readonly record struct CanopyAirOffset(
    double TemperatureK, double TemperatureErrorK, double HumidityPct, double HumidityErrorPct);
