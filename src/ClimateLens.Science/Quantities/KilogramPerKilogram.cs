namespace ClimateLens.Science.Quantities;

/// <summary>Mass of water vapour to a mass of air: of dry air for the humidity (mixing) ratio, of moist air for specific humidity. [kg/kg]</summary>
/// <param name="Value">Ratio of masses. [kg/kg]</param>
/// <remarks>The function that gives it says which air is meant. NaN means not known.</remarks>
public readonly record struct KilogramPerKilogram(double Value);
