namespace ClimateLens.Science.Quantities;

/// <summary>Length of a plant or a spacing. [cm]</summary>
/// <param name="Value">Length. [cm]</param>
/// <remarks>NaN means not known.</remarks>
public readonly record struct Centimetre(double Value);
