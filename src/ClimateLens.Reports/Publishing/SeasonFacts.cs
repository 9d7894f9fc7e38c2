using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Publishing;

/// <summary>What a page of the season keeps of a week.</summary>
/// <param name="WetHours">Hours with leaves wet; null where not known. [h]</param>
/// <param name="Cover">Ground cover at its end; null where not known. [1]</param>
/// <param name="WettedLeaves">Waterings over the leaves; null when nothing tells of waterings.</param>
/// <param name="Late">Those of them after the cut-off.</param>
/// <param name="PotChecks">Pot checks; 0 for none.</param>
/// <param name="Jumps">Jumps of two levels or more from one day to the next.</param>
/// <param name="DryDowns">Pots that went dry.</param>
/// <param name="Treatments">Treatments.</param>
internal sealed record SeasonFacts(int? WetHours, double? Cover, int? WettedLeaves, int Late, int PotChecks, int Jumps, int DryDowns, int Treatments)
{
    /// <summary>Those of a review.</summary>
    public static SeasonFacts Of(Review review) => new(
        review.Hours.Any(h => h.Wet is not null) ? review.Hours.Count(h => h.Wet == true) : null,
        review.Canopy?.Cover.Value,
        review.Waterings?.Count(w => w.WetsLeaves == true),
        review.Waterings?.Count(w => w is { WetsLeaves: true, AfterCutOff: true }) ?? 0,
        review.Pots?.Count ?? 0,
        review.Pots?.Jumps.Length ?? 0,
        review.Pots?.DryDowns.Length ?? 0,
        review.Records?.Treatments.Length ?? 0);
}
