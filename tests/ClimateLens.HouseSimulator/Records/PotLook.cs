using NodaTime;

namespace ClimateLens.HouseSimulator.Records;

/// <summary>What one person notes of one pot.</summary>
/// <param name="Time">By the clock on the wall.</param>
/// <param name="House">House id.</param>
/// <param name="Bench">Bench.</param>
/// <param name="Pot">Number of the pot on its bench, from 1.</param>
/// <param name="Grader">Who.</param>
/// <param name="Grade">Level to half levels.</param>
/// <param name="TrueLevel">Level as it is.</param>
/// <param name="WeightG">Weight of the pots that are weighed, else null. [g]</param>
/// <param name="LeafState">How its leaves stand.</param>
/// <param name="MediumC">Temperature of the medium where it is taken, else null. [°C]</param>
public sealed record PotLook(LocalDateTime Time, string House, string Bench, int Pot, string Grader, double Grade, double TrueLevel, double? WeightG, string LeafState, double? MediumC);
