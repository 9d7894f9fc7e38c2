namespace ClimateLens.Science.Quantities;

/// <summary>Resistance to the exchange of heat or vapour between a surface and the air. [s/m]</summary>
/// <param name="Value">Resistance of one side of a leaf unless a word says otherwise. [s/m]</param>
/// <remarks>NaN means not known.</remarks>
public readonly record struct SecondPerMetre(double Value);
