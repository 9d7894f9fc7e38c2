using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Pots;

/// <summary>What is known of the pots; nothing without pot checks in the period.</summary>
/// <param name="Pots">What people saw.</param>
/// <param name="Roots">Whether the weather in the pots favoured root rot.</param>
public sealed record PotState(PotReport? Pots, RootReport? Roots);
