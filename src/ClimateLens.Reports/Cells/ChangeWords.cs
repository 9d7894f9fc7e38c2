namespace ClimateLens.Reports.Cells;

/// <summary>Changes and causes in plain words.</summary>
internal static class ChangeWords
{
    /// <summary>A what-if behind "had we".</summary>
    public static string Of(string whatIf) => whatIf switch
    {
        "waterBeforeCutOff" => "finished every watering over the leaves by the cut-off",
        "waterOffLeaves" => "kept the water off the leaves",
        "widerSpacing" => "set the plants a quarter wider apart",
        "heatAndVentBeforeSunrise" => "heated and vented a little before sunrise",
        "all" => "done all of these",
        _ => Words.Spaced(whatIf),
    };

    /// <summary>A cause as a name.</summary>
    public static string Cause(string cause) => cause switch
    {
        "lateWatering" => "late watering",
        "leafWetting" => "water onto leaves",
        "closedCanopy" => "a closed canopy",
        "climateControl" => "heat and vent before sunrise",
        "weather" => "the weather and all else",
        _ => Words.Spaced(cause),
    };

    /// <summary>A cause behind a number of hours.</summary>
    public static string From(string cause) => cause switch
    {
        "weather" => "are left to the weather and all else",
        "climateControl" => "go back to too little heat and vent before sunrise",
        "leafWetting" => "go back to water on leaves at any hour",
        _ => $"go back to {Cause(cause)}",
    };
}
