namespace ClimateLens.Science.Quantities;

/// <summary>Height above sea level. [m]</summary>
/// <param name="Value">Height. [m]</param>
/// <remarks>Negative below sea level. NaN means not known.</remarks>
public readonly record struct Metre(double Value);
