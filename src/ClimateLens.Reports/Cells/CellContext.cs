using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>All that a cell may look at.</summary>
/// <param name="Review">The review.</param>
/// <param name="Facts">Counts that several cells need.</param>
/// <param name="Units">Units to read.</param>
/// <param name="Files">Names of the data files beside the page.</param>
public sealed record CellContext(Review Review, WeekFacts Facts, DisplayUnits Units, ImmutableArray<string> Files)
{
    /// <summary>What the notebook gave the cell.</summary>
    public Notebooks.CellValues Values { get; init; } = Notebooks.CellValues.None;

    /// <summary>A context for a review.</summary>
    public static CellContext Of(Review review, DisplayUnits units, IEnumerable<string> files)
        => new(review, WeekFacts.Of(review), units, [.. files]);

    /// <summary>Folder of the store as the nursery file names it, for the queries beside the data.</summary>
    public string Store { get; init; } = "store";

    /// <summary>What the review itself says of why a part is unknown, or the given words.</summary>
    public string WhyNotKnown(string what, string otherwise)
        => Review.NotKnown.FirstOrDefault(u => u.What == what)?.Why is { Length: > 0 } why ? why : otherwise;
}
