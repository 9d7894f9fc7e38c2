namespace ClimateLens.Science.Balance;

/// <summary>A sudden rise of the humidity that sun, vents and outside air do not explain.</summary>
/// <param name="Step">Step of the inputs at which the rise begins.</param>
/// <param name="RiseGm3">Measured humidity a quarter of an hour on, less what the balance expects. [g/m³]</param>
/// <param name="Score">The rise over its usual scatter at that time of day; <see cref="WateringTraces.LeastScore"/> or more. [1]</param>
public readonly record struct WateringTrace(int Step, double RiseGm3, double Score);
