namespace ClimateLens.Science.Quantities;

/// <summary>Slope of vapour pressure against temperature, or a psychrometric constant. [kPa/K]</summary>
/// <param name="Value">Slope. [kPa/K]</param>
/// <remarks>Multiplied by a <see cref="KelvinDifference"/> it gives a <see cref="KiloPascal"/>. NaN means not known.</remarks>
public readonly record struct KiloPascalPerKelvin(double Value);
