using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Text;

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
            "With the same water given to the pots and none onto the leaves",
            "Where the crop and the house allow, water below the leaves: drip, ebb and flow, or a lance at the pot. Where they do not, water over the leaves early on bright days, and less often but enough.",
            "Water early and off the leaves: common practice. Fog lines count as they were.",
            [$"{Say.Count(wetting, "watering")} over the leaves in the period."]);
    }
}
