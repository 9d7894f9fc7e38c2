using System.Collections.Immutable;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Reports.Cells;

/// <summary>What the numbers of a cell come from: what stands folded below it.</summary>
public sealed record CellBasis
{
    /// <summary>Nothing but the review.</summary>
    public static CellBasis None { get; } = new();

    /// <summary>Keys of the review's methods.</summary>
    public ImmutableArray<string> Methods { get; init; } = [];

    /// <summary>Data files beside the page that hold its numbers.</summary>
    public ImmutableArray<string> Files { get; init; } = [];

    /// <summary>Channels of the store that they were worked out from.</summary>
    public ImmutableArray<string> Channels { get; init; } = [];

    /// <summary>Kinds of record that they were worked out from.</summary>
    public ImmutableArray<RecordKind> Records { get; init; } = [];

    /// <summary>Whether what is measured and assumed of the leaves is in them.</summary>
    public bool RestsOnLeaves { get; init; }
}
