namespace ClimateLens.Science.Quantities;

/// <summary>Density of air. [kg/m³]</summary>
/// <param name="Value">Density. [kg/m³]</param>
/// <remarks>For the vapour in it use <see cref="GramPerCubicMetre"/>. NaN means not known.</remarks>
public readonly record struct KilogramPerCubicMetre(double Value);
