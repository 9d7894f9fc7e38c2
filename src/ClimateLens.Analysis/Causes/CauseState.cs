using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.WateringEvents;

namespace ClimateLens.Analysis.Causes;

/// <summary>What can be said of who put the humidity there.</summary>
public sealed record CauseState
{
    /// <summary>The balance; null where it was not fitted.</summary>
    public HouseBalanceReport? Balance { get; init; }

    /// <summary>Waterings by comparison; null without waterings over the leaves or without the weeks before.</summary>
    public MatchedWaterings? Waterings { get; init; }

    /// <summary>What-ifs; null where they cannot be told.</summary>
    public ImmutableArray<WhatIf>? WhatIfs { get; init; }

    /// <summary>Shares of the risk hours; null where they cannot be told.</summary>
    public ImmutableArray<Cause>? Shares { get; init; }

    /// <summary>Sudden rises of the humidity that may be waterings; null where no balance has skill.</summary>
    public ImmutableArray<WateringHint>? Hints { get; init; }

    /// <summary>Floods on dull and on bright days; null without floods or without the weeks before.</summary>
    public FloodReport? Floods { get; init; }

    /// <summary>Risk hours that each late watering caused; null where the week could not be replayed.</summary>
    internal ImmutableDictionary<WateringEvent, Estimate>? CausedBy { get; init; }

    /// <summary>Why what-ifs and shares cannot be told, and what would make them told; empty where they are.</summary>
    public string WhyNot { get; init; } = "";

    /// <summary>Changes that could not be replayed, by the name of their what-if, each with the reason.</summary>
    public ImmutableSortedDictionary<string, string> NotReplayed { get; init; } = ImmutableSortedDictionary<string, string>.Empty;
}
