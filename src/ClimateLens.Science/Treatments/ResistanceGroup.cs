namespace ClimateLens.Science.Treatments;

/// <summary>A resistance group of fungicides by its code.</summary>
/// <param name="Code">Code as <see cref="GroupRuns.CodesOf"/> gives it.</param>
/// <param name="Name">What the group is called.</param>
/// <param name="Risk">Risk of resistance.</param>
/// <param name="Seen">Whether the risk was seen in a source; else it is from memory and must be held against the current list of the body that assigns the codes.</param>
public sealed record ResistanceGroup(string Code, string Name, ResistanceRisk Risk, bool Seen);
