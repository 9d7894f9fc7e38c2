using System.Collections.Immutable;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Whether the weather in the pots favoured root rot: a plain signal with its reasons, and no probability of disease.</summary>
/// <param name="Signal"><c>quiet</c>, <c>watch</c> or <c>act</c>.</param>
/// <param name="Reasons">Why, the heaviest first.</param>
public sealed record RootReport(string Signal, ImmutableArray<RootReason> Reasons);

/// <summary>A reason.</summary>
/// <param name="Id"><c>longSaturation</c>, <c>dryThenSaturated</c>, <c>warmMedium</c>, <c>coolWetMedium</c> or <c>recirculatedWater</c>.</param>
/// <param name="Text">What was seen, as a sentence.</param>
/// <param name="Source">Published source, or common practice.</param>
public sealed record RootReason(string Id, string Text, string Source);
