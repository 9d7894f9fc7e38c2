namespace ClimateLens.Science.Infection;

/// <summary>A wet period against the wet hours that a pathogen needs at its temperature.</summary>
/// <param name="RequiredHours">Wet hours needed; infinite where the temperature allows none. [h]</param>
/// <param name="Share">Wet hours over those needed. [1]</param>
/// <param name="Met">Whether the period was long enough.</param>
public readonly record struct MagareyScore(double RequiredHours, double Share, bool Met);
