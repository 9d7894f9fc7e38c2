using ClimateLens.Analysis.Causes;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>A spacing wider would have avoided risk hours.</summary>
internal static class SpaceWider
{
    public const string Id = "spaceWider";

    public static Candidate? Of(Evidence evidence)
        => Avoidable.Advice(
            evidence,
            Change.WiderSpacing,
            Id,
            Phrase.Of("With plants a quarter wider apart"),
            Phrase.Of("If there is room, space the crop now; if not, look at the densest benches first, and keep water off their leaves."),
            Phrase.Of("What a closed canopy does to the air among the leaves is an assumption unless a sensor hangs there. Wider spacing costs room, which is not weighed here."),
            evidence.Period.Canopy is { } canopy ? [Phrase.Of($"Ground cover on the last day: {canopy.Cover.Value:0.00} ({canopy.Cover.Low:0.00} to {canopy.Cover.High:0.00}).")] : []);
}
