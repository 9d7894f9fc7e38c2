using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;

namespace ClimateLens.Analysis.Advice;

/// <summary>Water kept off the leaves would have avoided risk hours.</summary>
internal static class KeepWaterOffLeaves
{
    public const string Id = "keepWaterOffLeaves";

    public static Candidate? Of(Evidence evidence)
    {
        Estimate? avoided = Avoidable.By(evidence, Change.WaterOffLeaves);
        int wetting = evidence.Waterings.Count(w => w.WetsLeaves == true);
        return wetting == 0 || !Avoidable.IsWorthwhile(avoided) ? null : new Candidate(
            Id,
            avoided!.Value,
            $"With the same water given to the pots and none onto the leaves, {Avoidable.Hours(evidence, avoided)} would not have been.",
            "Where the crop and the house allow, water below the leaves: drip, ebb and flow, or a lance at the pot. Where they do not, water over the leaves early on bright days, and less often but enough.",
            $"{Avoidable.Caution} Water early and off the leaves: common practice. Fog lines count as they were.",
            [$"{Say.Count(wetting, "watering")} over the leaves in the period."]);
    }
}
