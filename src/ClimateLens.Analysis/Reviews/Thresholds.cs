using System.Collections.Immutable;
using ClimateLens.Analysis.Advice;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The thresholds in force, each with its source.</summary>
internal static class Thresholds
{
    private static string Practice => Phrase.Of("common practice, no source");

    public static ImmutableArray<Threshold> Of(HousePeriod period)
    {
        RiskRules rules = period.Input.House.Rules;
        string Source(string name, string ifDefault) => rules.SetByUser.Contains(name) ? Phrase.Of("nursery file") : ifDefault;
        return
        [
            new("marginK", rules.MarginK, "K", Source("marginK", Phrase.Of("with a night offset of 1.0 K this is a dew-point depression of the air of 2.0 K, the wetness onset of Gillespie et al. 1993 and Sentelhas et al. 2008 (from memory)"))),
            new("temperatureLowC", rules.TemperatureLowC, "Cel", Source("temperatureLowC", Phrase.Of("lowest temperature tested by Bulger, Ellis and Madden 1987, grey mould on strawberry flowers (abstract)"))),
            new("temperatureHighC", rules.TemperatureHighC, "Cel", Source("temperatureHighC", Phrase.Of("highest temperature tested by Bulger, Ellis and Madden 1987, grey mould on strawberry flowers (abstract)"))),
            new("leafNightOffsetK", rules.LeafNightOffsetK, "K", Source("leafNightOffsetK", Phrase.Of("assumption of this project from a leaf energy balance (docs/science/risk-hours.md)"))),
            new("leafNightOffsetErrorK", rules.LeafNightOffsetErrorK, "K", Source("leafNightOffsetErrorK", Phrase.Of("assumption of this project from a leaf energy balance (docs/science/risk-hours.md)"))),
            new("leafBalanceErrorK", rules.LeafBalanceErrorK, "K", Source("leafBalanceErrorK", Phrase.Of("0.3 K by the 2 K by which the temperature of the cover may be off and 0.2 K by stomata, added as squares; choice of this project (docs/science/leaf.md)"))),
            .. Canopy(rules, Source),
            new("dryingHours", rules.DryingHours, "h", Source("dryingHours", Practice)),
            new("dullDayMJm2", rules.DullDayMJm2, "MJ/m2", Source("dullDayMJm2", Phrase.Of("choice of this project, no source"))),
            new("hotLeafC", WaterOnHotLeaves.HotC, "Cel", Practice),
            new("strongSunWm2", WaterOnHotLeaves.StrongSunWm2, "W/m2", Practice),
            new("humidNightPct", NightHours.HumidPct, "%", Phrase.Of("Michigan State University Extension, advice on grey mould in greenhouses")),
            new("clockFaultMin", ClockLimits.LeastFaultMin, "min", Phrase.Of("choice of this project (docs/science/clock.md)")),
            new("saturatedPct", SeriesChecks.SaturatedPct, "%", Practice),
            .. PotNotes.Limits(period),
            .. Accuracies(period),
        ];
    }

    private static IEnumerable<Threshold> Canopy(RiskRules rules, Func<string, string, string> source)
    {
        string choice = Phrase.Of("choice of this project; direction and bounds from greenhouse rose, van Westreenen et al. 2020 (abstract)");
        if (rules.CanopyDifference)
        {
            yield return new("canopyTemperatureK", rules.CanopyTemperatureK, "K", source("canopyTemperatureK", choice));
            yield return new("canopyTemperatureErrorK", rules.CanopyTemperatureErrorK, "K", source("canopyTemperatureErrorK", choice));
            yield return new("canopyHumidityPct", rules.CanopyHumidityPct, "%", source("canopyHumidityPct", choice));
            yield return new("canopyHumidityErrorPct", rules.CanopyHumidityErrorPct, "%", source("canopyHumidityErrorPct", choice));
        }
    }

    private static IEnumerable<Threshold> Accuracies(HousePeriod period)
    {
        SensorAccuracy temperature = BiasDraws.AirTemperature(period), humidity = BiasDraws.Humidity(period);
        yield return new("airTemperatureAccuracy", temperature.HalfWidth, "K", temperature.Source);
        yield return new("relativeHumidityAccuracy", humidity.HalfWidth, "%", humidity.Source);
        foreach (string channel in ((string[])["canopyTemperature", "canopyHumidity"]).Where(c => period.Series.Any(s => s.Channel.Name == c)))
        {
            SensorAccuracy canopy = BiasDraws.Canopy(period, channel);
            yield return new($"{channel}Accuracy", canopy.HalfWidth, channel == "canopyHumidity" ? "%" : "K", canopy.Source);
        }

        if (period.Leaf is not null)
        {
            SensorAccuracy leaf = BiasDraws.Leaf(period);
            yield return new("leafTemperatureAccuracy", leaf.HalfWidth, "K", leaf.Source);
        }
    }
}
