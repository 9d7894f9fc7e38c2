namespace ClimateLens.HouseSimulator.Scenario;

/// <summary>What could be done otherwise in a house; several at once make a sum.</summary>
[Flags]
public enum Intervention
{
    None = 0,

    /// <summary>All waterings that wet leaves are done by a time of day.</summary>
    WaterBeforeCutOff = 1,

    /// <summary>The water that pots caught comes by drip.</summary>
    WaterOffLeaves = 2,

    /// <summary>Pots stand further apart.</summary>
    WiderSpacing = 4,

    /// <summary>A minimum of heat and vent before sunrise.</summary>
    HeatAndVentBeforeSunrise = 8,

    All = 15,
}
