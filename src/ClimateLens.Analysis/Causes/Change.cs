namespace ClimateLens.Analysis.Causes;

/// <summary>What could have been done otherwise. Their order is that of the causes in docs/review.schema.json.</summary>
[Flags]
internal enum Change
{
    /// <summary>The period as it was.</summary>
    None = 0,

    /// <summary>All waterings over the leaves finished by the day's cut-off; answers late watering.</summary>
    WaterBeforeCutOff = 1,

    /// <summary>The same water to the pots, none onto leaves; answers leaf wetting.</summary>
    WaterOffLeaves = 2,

    /// <summary>Plants one spacing wider; answers the closed canopy.</summary>
    WiderSpacing = 4,

    /// <summary>A minimum of heat and vent before sunrise; answers climate control.</summary>
    HeatAndVentBeforeSunrise = 8,

    /// <summary>All of them.</summary>
    All = WaterBeforeCutOff | WaterOffLeaves | WiderSpacing | HeatAndVentBeforeSunrise,
}
