using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Learned;

/// <summary>
/// How often the learned check speaks on simulated weeks in which no sensor has a fault: the worst of three sets of sensors, 20 seeds, 120 weeks
/// each. Measured by <c>learned-rates</c> (docs/science/learned-check.md); a test holds a part of these weeks to them.
/// </summary>
public static class LearnedRates
{
    /// <summary>Clean values called suspect, of 1,000 judged. [1]</summary>
    public const double SuspectOfThousand = 0.1;

    /// <summary>Clean house-weeks in which some sensor was said to have shifted, of 100. [1]</summary>
    public const double ShiftsOfHundredWeeks = 6;

    /// <summary>Clean house-weeks in which some value was called suspect, of 100. [1]</summary>
    public const double SuspectWeeksOfHundred = 35;

    /// <summary>The same where it had only the fewest days to learn from (10 seeds, 60 weeks each). [1]</summary>
    public const double ShiftsOfHundredWeeksAtFirst = 12;

    /// <summary>The rates in a sentence.</summary>
    public static string Sentence =>
        Phrase.Of($"On simulated weeks without a fault it called up to {Say.Number(SuspectOfThousand)} of 1,000 values suspect, some value in up to {Say.Number(SuspectWeeksOfHundred)} of 100 weeks, and in up to {Say.Number(ShiftsOfHundredWeeks)} of 100 weeks ({Say.Number(ShiftsOfHundredWeeksAtFirst)} with only three weeks to learn from) said that a sensor had shifted; real houses will differ.");
}
