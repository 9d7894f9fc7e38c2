namespace ClimateLens.Science.Quantities;

/// <summary>Speed of air. [m/s]</summary>
/// <param name="Value">Air speed. [m/s]</param>
/// <remarks>NaN means not known.</remarks>
public readonly record struct MetrePerSecond(double Value);
