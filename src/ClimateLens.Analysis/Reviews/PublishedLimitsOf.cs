using System.Collections.Immutable;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Infection;

namespace ClimateLens.Analysis.Reviews;

/// <summary>Where a period stands to plain limits that advisers and papers publish: second opinions beside the index.</summary>
internal static class PublishedLimitsOf
{
    public static ImmutableArray<PublishedLimit> Period(HousePeriod period, RiskState risk)
    {
        CropSettings? crop = StandingCrop.Of(period.Input);
        return
        [
            HumidHours(period, GrowerLimits.AdvisedHumidityPct, Phrase.Of("Michigan State University Extension: keep below 85 %")),
            HumidHours(period, GrowerLimits.WetHumidityPct, Phrase.Of("Sentelhas et al. 2008: leaves in the open often wet from 90 % on")),
            .. WetWithinADay(period, risk),
            .. Gerbera(period, crop),
            .. Mildew(period, crop),
            .. Pathogens(period, risk, crop),
        ];
    }

    private static PublishedLimit HumidHours(HousePeriod period, double limit, string source)
    {
        KnownHours hours = GrowerLimits.HoursFrom(period.Frame.Values(Derived.HumidityPct).AsSpan()[period.FirstStep..], limit, period.Frame.Axis.Step.TotalSeconds);
        return new($"humidityFrom{Say.Number(limit)}", Phrase.Of($"Humidity was at or above {Say.Number(limit)} % for {Say.Number(hours.Hours, 1)} of {Say.Number(hours.Known, 1)} hours with data."), null, source);
    }

    private static IEnumerable<PublishedLimit> WetWithinADay(HousePeriod period, RiskState risk)
    {
        TimeAxis axis = period.Frame.Axis;
        if (86400 % axis.Step.TotalSeconds != 0)
        {
            yield break;
        }

        double[] least = new double[axis.Count], most = new double[axis.Count];
        GrowerLimits.WetWithinADay(risk.WetStep, axis.Step.TotalSeconds, least, most);
        int worst = period.FirstStep;
        for (int i = period.FirstStep; i < least.Length; i++)
        {
            worst = least[i] > least[worst] ? i : worst;
        }

        bool? passed = least[worst] >= GrowerLimits.WetHoursInADay ? true : most[period.FirstStep..].All(h => h < GrowerLimits.WetHoursInADay) ? false : null;
        string found = least[worst] > 0
            ? Phrase.Of($"By the film model leaves were wet for up to {Say.Number(least[worst], 1)} hours within 24 (to {Say.Time(axis.StartOf(worst) + axis.Step, axis.Zone)}); advice is to stay under {Say.Number(GrowerLimits.WetHoursInADay)}.")
            : passed == false ? Phrase.Of($"By the film model leaves stayed dry; advice is to keep them wet for less than {Say.Number(GrowerLimits.WetHoursInADay)} hours within 24.")
            : Phrase.Of($"Whether leaves were wet for less than {Say.Number(GrowerLimits.WetHoursInADay)} hours within 24, as is advised, is not known.");
        yield return new("wetWithinADay", found, passed, Phrase.Of("Michigan State University Extension, advice on grey mould in greenhouses"));
    }

    private static IEnumerable<PublishedLimit> Gerbera(HousePeriod period, CropSettings? crop)
    {
        if (crop?.Species.StartsWith("gerbera", StringComparison.Ordinal) != true)
        {
            yield break;
        }

        DayMeans days = DayMeans.Of(period);
        double[] great = new double[days.Count];
        GerberaRule.Of(days.HumidityPct, days.RadiationJcm2, great);
        double[] inPeriod = great[days.FirstOfPeriod..];
        int count = inPeriod.Count(g => g == 1), unknown = inPeriod.Count(double.IsNaN);
        string rest = unknown == 0 ? "" : Phrase.Of($" {Say.Count(unknown, "day")} not known.");
        yield return new("gerberaRule", Phrase.Of($"Flowers cut on {count} of {Say.Count(inPeriod.Length, "day")} carried a great risk of spots by the gerbera rule (humidity above 70 % six to eight days before, dull on the three days before).{rest}"), count > 0 ? true : unknown > 0 ? null : false, Phrase.Of("Kerssies 1994 (summary of the thesis): gerbera only"));
    }

    private static IEnumerable<PublishedLimit> Mildew(HousePeriod period, CropSettings? crop)
    {
        if (crop?.WatchFor.Contains("powderyMildew") != true)
        {
            yield break;
        }

        bool poinsettia = crop.Species == "poinsettia";
        PowderyMildewDay[] days = DayMeans.NightsAndDays(period);
        double[] favourable = new double[days.Length];
        (poinsettia ? PowderyMildewLimits.Poinsettia : PowderyMildewLimits.Rose).Of(days, favourable);
        int count = favourable.Count(f => f == 1), unknown = favourable.Count(double.IsNaN);
        string rest = unknown == 0 ? "" : Phrase.Of($" {Say.Count(unknown, "day")} not known.");
        yield return new(
            "powderyMildew",
            Phrase.Of($"On {count} of {Say.Count(days.Length, "day")} the weather favoured powdery mildew: a night of 90 % humidity and more, then a day of 40 to 70 % at 10 to 28 °C.{rest} It needs no wet leaf."),
            count > 0 ? true : unknown > 0 ? null : false,
            poinsettia ? Phrase.Of("limits for rose (Horst 1983, Xu 1999) as a stand-in, days below 30 °C as advised by New York State IPM") : Phrase.Of("Horst 1983 (re-statement), Xu 1999 (abstract): rose, standing in for this crop"));
    }

    private static IEnumerable<PublishedLimit> Pathogens(HousePeriod period, RiskState risk, CropSettings? crop)
    {
        foreach (PathogenSettings given in crop?.Pathogens ?? [])
        {
            MagareyPathogen pathogen = new(given.LowestC, given.BestC, given.HighestC, given.LeastHours, given.MostHours);
            Science.Infection.WetPeriod[] periods = WetSpells.Within(period, risk, new WetPeriodRules(given.LongestDryHours, 0));
            int met = periods.Count(p => pathogen.Of(p).Met);
            string longest = periods.Length == 0 ? "" : Phrase.Of($" The nearest had {Say.Number(100 * periods.Max(p => Known(pathogen.Of(p).Share)), 0)} % of the wet hours needed.");
            yield return new($"pathogen:{given.Name}", Phrase.Of($"{met} of {Say.Count(periods.Length, "wet period")} lasted long enough for {given.Name} at their temperature.{longest}"), met > 0, Phrase.Of($"Magarey, Sutton and Thayer 2005, general form (4.9 h root mean square over 53 studies); numbers from the nursery file: {given.Source}"));
        }
    }

    private static double Known(double share) => double.IsNaN(share) ? 0 : share;
}
