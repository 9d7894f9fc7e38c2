namespace ClimateLens.Analysis.Causes;

/// <summary>Risk hours of the period under every set of changes that can be told, draw by draw.</summary>
/// <param name="Known">The changes that can be told.</param>
/// <param name="Counts">Risk hours by set of changes (a set with a change that cannot be told is null), then by draw. [h]</param>
/// <param name="Values">Hours that are risk hours in at least half of the draws, by set of changes; NaN where null. [h]</param>
internal sealed record ReplayedWeeks(Change Known, double[]?[] Counts, double[] Values)
{
    /// <summary>Late waterings of the period.</summary>
    public required LateRounds Late { get; init; }

    /// <summary>Risk hours that an earlier finish would have avoided, by late round, then by draw. [h]</summary>
    public required double[][] ByLateRound { get; init; }

    /// <summary>The same by the hours that are risk hours in at least half of the draws. [h]</summary>
    public required double[] ValueByLateRound { get; init; }

    /// <summary>Number of draws.</summary>
    public int Draws => Counts[0]!.Length;
}
