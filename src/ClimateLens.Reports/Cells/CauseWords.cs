namespace ClimateLens.Reports.Cells;

/// <summary>Causes of error in plain words.</summary>
internal static class CauseWords
{
    /// <summary>The words for a cause of <see cref="Analysis.Reviews.ErrorShare"/>, to stand in a sentence.</summary>
    public static string Of(string cause) => cause switch
    {
        "airTemperature" => "the temperature sensor",
        "relativeHumidity" => "the humidity sensor",
        "leafTemperature" => "the leaf temperature",
        "canopyTemperature" => "how much cooler the air among the leaves is",
        "canopyHumidity" => "how much damper the air among the leaves is",
        "cover" => "how far the crop has closed",
        "light" => "how much sun the leaves take up",
        "airSpeed" => "how fast the air moves at the leaf",
        "film" => "how much water leaves hold",
        _ => Words.Spaced(cause),
    };
}
