namespace ClimateLens.Science.Quantities;

/// <summary>Vapour pressure, vapour-pressure deficit or air pressure. [kPa]</summary>
/// <param name="Value">Pressure. [kPa]</param>
/// <remarks>1 kPa is 10 hPa (mbar). NaN means not known.</remarks>
public readonly record struct KiloPascal(double Value);
