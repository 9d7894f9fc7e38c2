using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Water kept off the leaves would have avoided risk hours.</summary>
internal static class KeepWaterOffLeaves
{
    public const string Id = "keepWaterOffLeaves";

    public static Candidate? Of(Evidence evidence)
    {
        int wetting = evidence.Waterings.Count(w => w.WetsLeaves == true);
        return wetting == 0 ? null : Avoidable.Advice(
            evidence,
            Change.WaterOffLeaves,
            Id,
            Phrase.Of("With the same water given to the pots and none onto the leaves"),
            Phrase.Of("Where the crop and the house allow, water below the leaves: drip, ebb and flow, or a lance at the pot. Where they do not, water over the leaves early on bright days, and less often but enough."),
            Phrase.Of("Water early and off the leaves: common practice. Fog lines count as they were."),
            [Phrase.Of($"{Say.Count(wetting, "watering")} over the leaves in the period.")]);
    }
}
