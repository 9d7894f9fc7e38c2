using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;

namespace ClimateLens.Analysis.Causes;

/// <summary>The house period with other waterings or spacing: its leaves' light, water and shelter worked out again by the same stages. The air stays as measured.</summary>
internal static class OtherHouse
{
    /// <summary>The house period under a change of watering and spacing; what a change asks of the air is no concern of this.</summary>
    public static HousePeriod Under(HousePeriod period, CutOffs cutOffs, Change change)
    {
        HousePeriod other = period with { Events = OtherWaterings.Of(period, cutOffs, change) };
        if (change.HasFlag(Change.WiderSpacing))
        {
            other = CanopyCover.Add(other with { Input = WiderSpacing.Of(period.Input) });
        }

        HousePeriod leaves = LeafState.Add(other);

        // What a canopy sensor's gaps are filled with was fitted to the house as it was.
        return leaves with { Foliage = leaves.Foliage! with { FittedDifference = period.Foliage!.FittedDifference } };
    }
}
