namespace ClimateLens.Science.Canopy;

/// <summary>From a day on, plants stand so.</summary>
/// <param name="FromDay">Days after the start. [d]</param>
/// <param name="Spacing">How they stand.</param>
public readonly record struct SpacingStep(double FromDay, PlantSpacing Spacing);
