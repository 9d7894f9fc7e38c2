using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The methods that lead from air to leaf to risk, each with its source, range and error.</summary>
internal static class LeafNotes
{
    public static IEnumerable<MethodNote> Of(HousePeriod period)
    {
        RiskRules rules = period.Input.House.Rules;
        yield return Leaf(period, rules);
        yield return Air(period, rules);
        yield return new(
            "wetnessOfLeaves",
            Phrase.Of("wetness of leaves"),
            Phrase.Of($"A film of water of up to {Say.Number(FilmParameters.PotPlant.CapacityMm)} mm on both sides of a leaf together, filled by watering over the leaves, fog and dew, emptied by evaporation with the leaf's own energy balance; wet from {Say.Number(WetStates.Default.WetFromMm)} mm, dry again below {Say.Number(WetStates.Default.DryBelowMm)} mm. Air speed at the leaf {Say.Number(CanopyDays.OpenAirSpeedMs)} m/s, less among closed leaves."
                + $"{(rules.WetnessSensorRules ? Phrase.Of(" The leaf-wetness sensor rules where it tells.") : "")}"),
            Phrase.Of("Penman 1948 with the resistance of Stanghellini 1987 (from memory); film, limits and air speed are choices of this project (docs/science/wetness.md)"),
            Phrase.Of("Physical models of this kind missed by 0.8 h a day in one greenhouse and by 4 h in another (Gil et al. 2015): air speed among the leaves is hardly ever known."));
        yield return new(
            "wetPeriods",
            Phrase.Of("wet periods"),
            Phrase.Of("Wet hours with dry breaks of up to four hours between them form a period; its length and mean leaf temperature give the index, a logit: to 0 none, to 0.5 low, to 1 moderate, above high."),
            Phrase.Of("Broome et al. 1995, grape berries, as quoted in public codes; a stand-in for ornamentals (docs/science/infection.md)"),
            Phrase.Of("Fitted to 12 to 30 °C and 4 to 20 h with R² 0.75; shorter periods score nothing, others score as the nearest of these. On another crop it ranks periods and no more."));
        yield return new(
            "riskHours",
            Phrase.Of("risk hours"),
            Phrase.Of("Hours with leaves wet for at least half of them, or with leaf temperature less dew point below the margin, at an air temperature in range; counted when so in at least half of the draws."),
            Phrase.Of("thresholds as listed; margin by dew-point depression: Gillespie et al. 1993, Sentelhas et al. 2008 (from memory)"),
            Phrase.Of("Says that weather favoured grey mould, not that plants fell ill."));
        yield return new(
            "rangeOfRiskHours",
            Phrase.Of("range of risk hours"),
            Phrase.Of($"Every one of {BiasDraws.Count} draws gives each sensor one error for the whole time, uniform over its ± accuracy, and each assumption (leaf temperature, air among the leaves, cover, air speed, film) one within its range; humidity gets a tenth of its error anew each hour. The range holds 5 to 95 % of the draws."),
            Phrase.Of("JCGM 100:2008 4.3.7 and JCGM 101:2008; the hourly tenth is a choice of this project"),
            Phrase.Of("Holds for one sensor standing for the whole house; differences within the house are not in it."));
        yield return new(
            "whatTheErrorComesFrom",
            Phrase.Of("what the error comes from"),
            Phrase.Of("The hours worked out anew with one cause a standard deviation up, then down, all others left alone; half the difference squared is that cause's part."),
            Phrase.Of("JCGM 100:2008 5.1.2, with differences in place of derivatives"),
            Phrase.Of("Causes work together, and hours are whole: parts are good to about a tenth."));
    }

    private static MethodNote Leaf(HousePeriod period, RiskRules rules)
    {
        string offset = Say.Number(rules.LeafNightOffsetK), error = Say.Number(rules.LeafNightOffsetErrorK);
        string assumed = Phrase.Of($"air temperature, less {offset} K between sunset and sunrise: an assumption");
        bool byBalance = period.Foliage!.LeafFrom.Any(f => f == LeafFrom.Balance);
        string otherwise = byBalance
            ? Phrase.Of($"from the leaf's energy balance (sun, heat radiated to the cover, moving air, transpiration, dew)" + $"{(period.Foliage.LeafFrom.Any(f => f == LeafFrom.NightOffset) ? Phrase.Of($"; where the weather outside is missing, {assumed}") : "")}")
            : assumed;
        return new(
            "leafTemperature",
            Phrase.Of("leaf temperature"),
            period.Leaf is null ? Phrase.Of($"Not measured: {otherwise}.") : Phrase.Of($"Measured; where the sensor gives nothing, {otherwise}."),
            Phrase.Of("leaf energy balance with coefficients after Stanghellini 1987 (from memory); docs/science/leaf.md"),
            byBalance
                ? Phrase.Of($"Taken as ±{Say.Number(rules.LeafBalanceErrorK)} K for a dry leaf, most of it by sky and screen, besides what air speed and sun bring; by day a leaf may be 2 K off.")
                : Phrase.Of($"Assumed ±{error} K. By the balance 0.5 to 0.9 K under a screen 3 K colder than the air, 1.4 to 2.8 K under bare glass 10 K colder; by day leaves may be warmer or cooler than the air by 2 K."));
    }

    private static MethodNote Air(HousePeriod period, RiskRules rules)
    {
        bool sensor = period.Foliage!.HumidityInCanopy.Contains(true) || period.Foliage.TemperatureInCanopy.Contains(true);
        string assumed = rules.CanopyDifference
            ? Phrase.Of($"the main sensor's, with a difference that grows from nothing at a cover of 0.6 to {Say.Number(rules.CanopyTemperatureK)} ± {Say.Number(rules.CanopyTemperatureErrorK)} K and {Say.Number(rules.CanopyHumidityPct)} ± {Say.Number(rules.CanopyHumidityErrorPct)} points of humidity in a closed canopy: an assumption")
            : Phrase.Of("the main sensor's, without a difference, as the nursery file asks");
        return new(
            "airAmongTheLeaves",
            Phrase.Of("air among the leaves"),
            sensor ? Phrase.Of($"Measured by the sensor in the canopy; where it gives nothing, {assumed}.") : Phrase.Of($"Not measured: {assumed}."),
            Phrase.Of("direction and bounds: van Westreenen et al. 2020, greenhouse rose (abstract); the numbers are choices of this project"),
            Phrase.Of("As large as the difference itself. A sensor among the leaves would tell; canopyDifference = false in [house.rules] switches the assumption off."));
    }
}
