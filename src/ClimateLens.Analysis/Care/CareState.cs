using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Care;

/// <summary>What the records say.</summary>
/// <param name="Records">The report; null without any record.</param>
public sealed record CareState(RecordsReport? Records)
{
    /// <summary>Treatments that were loaded, for the findings.</summary>
    internal ImmutableArray<Treatment> Treatments { get; init; } = [];
}
