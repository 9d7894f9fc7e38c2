namespace ClimateLens.Science.Quantities;

/// <summary>Temperature on the Celsius scale. [°C]</summary>
/// <param name="Value">Temperature. [°C]</param>
/// <remarks>For a difference of temperatures use <see cref="KelvinDifference"/>. NaN means not known.</remarks>
public readonly record struct Celsius(double Value);
