using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;

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

    /// <summary>Why what-ifs and shares cannot be told, and what would make them told; empty where they are.</summary>
    public string WhyNot { get; init; } = "";

    /// <summary>Changes that could not be replayed, by the name of their what-if, each with the reason.</summary>
    public ImmutableSortedDictionary<string, string> NotReplayed { get; init; } = ImmutableSortedDictionary<string, string>.Empty;
}
