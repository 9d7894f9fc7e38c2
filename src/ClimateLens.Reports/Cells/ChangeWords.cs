using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Cells;

/// <summary>Changes and causes in plain words.</summary>
internal static class ChangeWords
{
    /// <summary>A what-if behind "had we".</summary>
    public static string Of(string whatIf) => whatIf switch
    {
        "waterBeforeCutOff" => Phrase.Of("finished every watering over the leaves by the cut-off"),
        "waterOffLeaves" => Phrase.Of("kept the water off the leaves"),
        "widerSpacing" => Phrase.Of("set the plants a quarter wider apart"),
        "heatAndVentBeforeSunrise" => Phrase.Of("heated and vented a little before sunrise"),
        "all" => Phrase.Of("done all of these"),
        _ => Words.Spaced(whatIf),
    };

    /// <summary>A cause as a name.</summary>
    public static string Cause(string cause) => cause switch
    {
        "lateWatering" => Phrase.Of("late watering"),
        "leafWetting" => Phrase.Of("water onto leaves"),
        "closedCanopy" => Phrase.Of("a closed canopy"),
        "climateControl" => Phrase.Of("heat and vent before sunrise"),
        "weather" => Phrase.Of("the weather and all else"),
        _ => Words.Spaced(cause),
    };

    /// <summary>A cause behind a number of hours.</summary>
    public static string From(string cause) => cause switch
    {
        "weather" => Phrase.Of("are left to the weather and all else"),
        "climateControl" => Phrase.Of("go back to too little heat and vent before sunrise"),
        "leafWetting" => Phrase.Of("go back to water on leaves at any hour"),
        _ => Phrase.Of($"go back to {Cause(cause)}"),
    };
}
