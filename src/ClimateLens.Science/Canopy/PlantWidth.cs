namespace ClimateLens.Science.Canopy;

/// <summary>A measured width.</summary>
/// <param name="Day">Days after the start. [d]</param>
/// <param name="DiameterCm">Mean width of the plants measured, 0.1 to 500. [cm]</param>
/// <param name="ErrorCm">Standard error of that mean, 0.01 to 100. [cm]</param>
public readonly record struct PlantWidth(double Day, double DiameterCm, double ErrorCm);
