using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Agreement;
using ClimateLens.Science.Pots;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The methods and thresholds behind pots and records, where the period has such records.</summary>
internal static class PotNotes
{
    private static string Practice => Phrase.Of("common practice, no source");

    /// <summary>The methods.</summary>
    public static IEnumerable<MethodNote> Methods(HousePeriod period)
    {
        if (Has(period.Input, RecordKind.PotChecks))
        {
            yield return new(
                "graders",
                Phrase.Of("graders"),
                Phrase.Of($"Weighted kappa on pots that two people graded within an hour, all levels from 1 to 5 in halves fixed; range by the greater of the large-sample error and that of leaving out one round at a time. A side-by-side round is sized to find {Say.Number(SideBySideRound.WorthFinding)} levels with a power of {Say.Number(SideBySideRound.Power)}."),
                Phrase.Of("Cohen 1968; Fleiss, Cohen and Everitt 1969; Efron 1982; Guenther 1981 (docs/science/agreement.md)"),
                Phrase.Of("A 90 % range held the true kappa in 90 to 96 % of simulated seeds; who of two people is right is not known."));
            yield return new(
                "drying",
                Phrase.Of("drying"),
                Phrase.Of($"Levels lost between two visits of a bench without a watering, against vapour-pressure deficit summed over time, from {DryingRates.FewestStretches} stretches on; benches with few drawn towards the mean of all. Tomorrow's level takes the air of the last days at the same hours."),
                Phrase.Of("common practice; shrinking: DerSimonian and Laird 1986, from memory (docs/science/pots.md)"),
                Phrase.Of($"Told only where at least {DryingScores.FewestForecasts} past forecasts beat \"same as yesterday\"; the score stands beside it."));
            yield return new(
                "roots",
                Phrase.Of("roots"),
                Phrase.Of("A signal of three steps: saturation over two days, a dry-down followed by saturation, and a medium that is warm, or cool and wet, count one each; two make act."),
                Phrase.Of("Blaker and MacDonald 1981, Gold and Stanghellini 1985 (abstracts), University of Massachusetts Extension 2015; the lines and the counting are choices of this project"),
                Phrase.Of("No chance of disease: trials on other crops."));
        }

        if (Has(period.Input, RecordKind.Treatments))
        {
            yield return new(
                "resistanceGroups",
                Phrase.Of("resistance groups"),
                Phrase.Of("Codes counted over the season: treatments of one day with the same codes and purpose are one; runs among those of one purpose."),
                Phrase.Of("alternate groups and limit each: Pacific Northwest handbook; most risks of resistance from memory, marked"),
                Phrase.Of("Counts what was noted; recommends nothing."));
        }
    }

    /// <summary>The thresholds.</summary>
    public static IEnumerable<Threshold> Limits(HousePeriod period)
    {
        HouseSettings house = period.Input.House;
        if (Has(period.Input, RecordKind.PotChecks))
        {
            yield return new("bandLow", house.Pots.BandLow, "1", house.Pots.SetByUser.Contains("bandLow") ? Phrase.Of("nursery file") : Practice);
            yield return new("bandHigh", house.Pots.BandHigh, "1", house.Pots.SetByUser.Contains("bandHigh") ? Phrase.Of("nursery file") : Practice);
            yield return new("warmMediumC", RootWeather.WarmC, "Cel", Phrase.Of("choice of this project (docs/science/pots.md)"));
            yield return new("coolMediumC", RootWeather.CoolC, "Cel", Phrase.Of("choice of this project (docs/science/pots.md)"));
        }

        if (Has(period.Input, RecordKind.Treatments))
        {
            yield return new("groupUses", house.Care.GroupUses, "1", house.Care.SetByUser.Contains("groupUses") ? Phrase.Of("nursery file") : Practice);
        }
    }

    private static bool Has(HouseInput input, RecordKind kind) => input.Records.Any(r => r.Kind == kind && input.Period.Contains(r.At));
}
