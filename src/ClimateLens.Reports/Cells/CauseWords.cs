using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Cells;

/// <summary>Causes of error in plain words.</summary>
internal static class CauseWords
{
    /// <summary>The words for a cause of <see cref="Analysis.Reviews.ErrorShare"/>, to stand in a sentence.</summary>
    public static string Of(string cause) => cause switch
    {
        "airTemperature" => Phrase.Of("the temperature sensor"),
        "relativeHumidity" => Phrase.Of("the humidity sensor"),
        "leafTemperature" => Phrase.Of("the leaf temperature"),
        "canopyTemperature" => Phrase.Of("how much cooler the air among the leaves is"),
        "canopyHumidity" => Phrase.Of("how much damper the air among the leaves is"),
        "cover" => Phrase.Of("how far the crop has closed"),
        "light" => Phrase.Of("how much sun the leaves take up"),
        "airSpeed" => Phrase.Of("how fast the air moves at the leaf"),
        "film" => Phrase.Of("how much water leaves hold"),
        _ => Words.Spaced(cause),
    };
}
