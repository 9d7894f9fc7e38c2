namespace ClimateLens.Science.Quantities;

/// <summary>Flux of energy through an area. [W/m²]</summary>
/// <param name="Value">Flux; the area is that of the ground or of one side of a leaf, as the function says. [W/m²]</param>
/// <remarks>NaN means not known.</remarks>
public readonly record struct WattPerSquareMetre(double Value);
