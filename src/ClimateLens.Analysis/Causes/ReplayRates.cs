namespace ClimateLens.Analysis.Causes;

/// <summary>What replayed weeks were worth on simulated ones; docs/validation.md has the table and the command that makes it again.</summary>
public static class ReplayRates
{
    /// <summary>The rates in one sentence.</summary>
    public const string Sentence =
        "On simulated weeks of a house with a boom, hours avoided by water kept off the leaves came to two thirds of the true ones and those of an earlier finish to a third, and the ranges held the truth in 52 and 66 % of the weeks: take them as \"at least about\".";
}
