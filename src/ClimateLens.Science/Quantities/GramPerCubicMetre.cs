namespace ClimateLens.Science.Quantities;

/// <summary>Mass of water vapour in a volume of moist air: absolute humidity or humidity deficit. [g/m³]</summary>
/// <param name="Value">Vapour density. [g/m³]</param>
/// <remarks>For the density of the air itself use <see cref="KilogramPerCubicMetre"/>. NaN means not known.</remarks>
public readonly record struct GramPerCubicMetre(double Value);
