namespace ClimateLens.Analysis.Causes;

/// <summary>Names of what-ifs and causes in the review.</summary>
internal static class ChangeNames
{
    /// <summary>The rest of the causes.</summary>
    public const string Weather = "weather";

    /// <summary>All changes at once.</summary>
    public const string All = "all";

    /// <summary>The changes one by one, in the order of their bits.</summary>
    public static readonly Change[] Each = [Change.WaterBeforeCutOff, Change.WaterOffLeaves, Change.WiderSpacing, Change.HeatAndVentBeforeSunrise];

    /// <summary>The what-if of a change.</summary>
    public static string WhatIf(Change change) => change switch
    {
        Change.WaterBeforeCutOff => "waterBeforeCutOff",
        Change.WaterOffLeaves => "waterOffLeaves",
        Change.WiderSpacing => "widerSpacing",
        Change.HeatAndVentBeforeSunrise => "heatAndVentBeforeSunrise",
        _ => All,
    };

    /// <summary>The cause that a change answers.</summary>
    public static string Cause(Change change) => change switch
    {
        Change.WaterBeforeCutOff => "lateWatering",
        Change.WaterOffLeaves => "leafWetting",
        Change.WiderSpacing => "closedCanopy",
        _ => "climateControl",
    };
}
