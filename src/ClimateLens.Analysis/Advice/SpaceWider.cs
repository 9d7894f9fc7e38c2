using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Analysis.Advice;

/// <summary>A spacing wider would have avoided risk hours.</summary>
internal static class SpaceWider
{
    public const string Id = "spaceWider";

    public static Candidate? Of(Evidence evidence)
    {
        Estimate? avoided = Avoidable.By(evidence, Change.WiderSpacing);
        return !Avoidable.IsWorthwhile(avoided) ? null : new Candidate(
            Id,
            avoided!.Value,
            $"With plants a quarter wider apart, {Avoidable.Hours(evidence, avoided)} would not have been.",
            "If there is room, space the crop now; if not, look at the densest benches first, and keep water off their leaves.",
            $"{Avoidable.Caution} What a closed canopy does to the air among the leaves is an assumption unless a sensor hangs there. Wider spacing costs room, which is not weighed here.",
            evidence.Period.Canopy is { } canopy ? [FormattableString.Invariant($"Ground cover on the last day: {canopy.Cover.Value:0.00} ({canopy.Cover.Low:0.00} to {canopy.Cover.High:0.00}).")] : []);
    }
}
