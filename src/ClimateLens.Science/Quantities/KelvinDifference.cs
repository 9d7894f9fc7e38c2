namespace ClimateLens.Science.Quantities;

/// <summary>Difference of two temperatures: a margin, an offset or an error. [K]</summary>
/// <param name="Value">Difference. [K]</param>
/// <remarks>For a temperature on a scale use <see cref="Celsius"/>. NaN means not known.</remarks>
public readonly record struct KelvinDifference(double Value);
