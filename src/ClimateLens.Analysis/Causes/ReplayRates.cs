using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Causes;

/// <summary>What replayed weeks were worth on simulated ones; docs/validation.md has the table and the command that makes it again.</summary>
public static class ReplayRates
{
    /// <summary>The rates in one sentence.</summary>
    public static string Sentence =>
        Phrase.Of("On simulated weeks of a house with a boom, hours avoided by water kept off the leaves came to two thirds of the true ones and those of an earlier finish to a third: take them as \"at least about\". Their ranges are stretched upwards by as much as such replays missed.");

    /// <summary>
    /// How far the range of hours avoided is stretched upwards: 2.7 times for an earlier finish and 1.7 times for water kept off the leaves, by which it would have held the truth in nine of ten simulated house-weeks of fifteen seeds
    /// (101 to 115) in which the truth lay above; other changes held it without. What the drawn errors leave out is how near to the dew point our canopy stays at dusk. [1]
    /// </summary>
    internal static double UpwardStretch(Change change) => change switch
    {
        Change.WaterBeforeCutOff => 2.7,
        Change.WaterOffLeaves => 1.7,
        _ => 1,
    };
}
