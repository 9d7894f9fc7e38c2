namespace ClimateLens.Science.Quantities;

/// <summary>Specific enthalpy of moist air, to a mass of dry air; 0 for dry air at 0 °C. [kJ/kg]</summary>
/// <param name="Value">Enthalpy. [kJ/kg]</param>
/// <remarks>One kg of dry air carries its vapour along. NaN means not known.</remarks>
public readonly record struct KilojoulePerKilogram(double Value);
