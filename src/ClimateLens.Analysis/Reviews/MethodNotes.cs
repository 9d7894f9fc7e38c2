using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Canopy;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The methods used, each with its source, range and error.</summary>
internal static class MethodNotes
{
    public static ImmutableArray<MethodNote> Of(HousePeriod period)
    {
        string step = Say.Number(period.Frame.Axis.Step.TotalMinutes);
        return
        [
            new(
                "alignment",
                Phrase.Of("alignment"),
                Phrase.Of($"All sources on one grid of {step} min, the step of the house's main source: means of faster readings, straight lines or the held value between slower ones at most two of their steps apart (65 min at most); the rest are gaps."),
                Phrase.Of("choice of this project"),
                Phrase.Of("No value is made up across a gap; an hour has data when half of its steps have.")),
            new(
                "clock",
                Phrase.Of("clock"),
                Phrase.Of("Each source's light, cut off at a small share of a bright day's, has its middle compared with true solar noon, day by day; the median rules, and a change of more than 25 min between days is looked for. Without light, the daily swing of outside temperature."),
                Phrase.Of("solar noon: Meeus 1998; method and limits of this project (docs/science/clock.md)"),
                Phrase.Of("By light a fault of 20 min and more is seen, with steps of half an hour and more or light inside the house of more; by outside temperature only one of 3 h and more.")),
            new(
                "quality",
                Phrase.Of("quality"),
                Phrase.Of("Gross range, spike, rate-of-change, flat-line and attenuated-signal tests by elapsed time; zeros without power, changes of unit, dew point over temperature, sensors that part. Failed values are left out, suspect ones used and counted."),
                Phrase.Of("U.S. IOOS QARTOD manuals (from memory), limits as listed in docs/science/quality.md"),
                Phrase.Of("Finds values that cannot be; a steady bias passes.")),
            new(
                "secondOpinion",
                Phrase.Of("second opinion"),
                Phrase.Of($"Each sensor of temperature or humidity predicted from the others, the hour and the sun: ridge regression, and boosted trees on what it leaves over where they help, learned from up to {Past.HistoryDays} days before the period; errors from {SensorFit.Blocks} blocks of days held out in turn. Suspect beyond {Say.Number(UsualError.StepTimes)} times the error that {Say.Number(1000 * UsualError.StepShare)} of 1,000 held-out steps kept to; a shift is a day's median beyond {Say.Number(DayError.Times)} robust standard deviations of the held-out days on {LastingShifts.FewestDays} days in a row, or twice that on one. Nothing within the sensor's accuracy is named."),
                Phrase.Of("ridge: Hoerl and Kennard 1970; boosting: Friedman 2001 (both from memory); limits set on simulated weeks (docs/science/learned-check.md)"),
                Phrase.Of($"Cannot tell a faulty sensor from a house that changed, nor see a fault that was there in the weeks before. " + $"{LearnedRates.Sentence}")),
            new(
                "moistAir",
                Phrase.Of("moist air"),
                Phrase.Of("Saturation vapour pressure over water in the Magnus form with the coefficients e_w1 of Buck 1981; VPD, dew point by inversion, absolute humidity from vapour pressure."),
                Phrase.Of("Buck 1981, J. Appl. Meteorol. 20:1527"),
                Phrase.Of("At most 0.07 % of saturation vapour pressure from 10 to 35 °C; dew point within 0.02 K of the Hyland-Wexler form; sensor error is far larger.")),
            .. LeafNotes.Of(period),
            new(
                "canopy",
                Phrase.Of("canopy"),
                Phrase.Of($"Share of the ground that discs of the plants' width hide at the spacing of the nursery file; width by a logistic curve from potting or pinch, first guesses by crop, fitted to the measured widths by least squares. The range holds 5 to 95 % of {CanopyForecast.Draws} curves drawn from the fit; closed from a cover of {Say.Number(GroundCover.Closed)}."),
                Phrase.Of("plane geometry; growth numbers by crop from memory (docs/science/canopy.md)"),
                Phrase.Of("Plants are no discs: 0.03 to 0.06 of cover near closure. Without widths the range is wide; three widths narrow it.")),
            new(
                "wateringCutOff",
                Phrase.Of("watering cut-off"),
                Phrase.Of("The latest finish between sunrise and sunset after which a full film on the leaves is dry an hour before sunset, by the film model with that day's air, light and cover. Where that is not known, or the nursery file sets the drying hours: sunset less these. Leaf-wetting methods only; fog and hand watering count as wetting leaves."),
                Phrase.Of("film: Penman 1948 and Stanghellini 1987; the hour to spare is common practice, no source; sunset: Meeus 1998"),
                Phrase.Of("About an hour; for leaves at the mean of the canopy, those deep in it dry later.")),
            new(
                "houseBalance",
                Phrase.Of("house balance"),
                Phrase.Of($"Vapour that leaves and wet surfaces give off, exchange by leaks, vents, wind and fans, dew on the cover: fitted to up to {Past.HistoryDays} days before the period by bounded least squares over free runs of a day, and scored on every fourth day, held out, against the day before and the mean day."),
                Phrase.Of("form as in Bot 1983 and Baille 1994, bounds as listed with each parameter (both from memory; docs/science/balance.md)"),
                Phrase.Of("Its skill on held-out days is printed; one well-mixed air volume.")),
            new(
                "whatIfsAndShares",
                Phrase.Of("what-ifs and shares"),
                Phrase.Of($"The period replayed under every set of changes with {WeekReplay.Draws} draws of parameters, sensor errors and what the balance missed; the difference goes onto the measured air and the same code judges the hours. Shares are exact Shapley values over all sets and add up to the total; the weather has what no change avoids."),
                Phrase.Of("Shapley 1953 (from memory); sizes of the changes are choices of this project (docs/science/causes.md)"),
                Phrase.Of($"Vents and heating are taken as they were where a change does not touch them. " + $"{ReplayRates.Sentence}")),
            new(
                "riseOfHumidity",
                Phrase.Of("rise of humidity"),
                Phrase.Of("Absolute humidity of the hour after a round of waterings less that of the hour before it, with the same draws. Waterings of the house less than an hour apart form a round and share its figures."),
                Phrase.Of("definition"),
                Phrase.Of("A difference, not an effect: sun, vents and heating change in the same hours.")),
            new(
                "scouting",
                Phrase.Of("scouting"),
                Phrase.Of($"Affected plants by week: each bench's last count of the week, summed. Beside them the risk hours of up to {ScoutedWeeks.Most} weeks of the same crop, worked out like the period's with {Scouting.WeekRisk.Draws} of its draws. Spearman's rank correlation of a count with the risk hours of the week before it, from {Scouting.ScoutingOf.FewestPairs} pairs on."),
                Phrase.Of("Spearman 1904 (from memory); range after Bonett and Wright 2000; share of random pairings (docs/science/scouting.md)"),
                Phrase.Of("An association, not a cause. The range is too narrow for weeks that follow from each other and for few pairs; the lag between infection and a spot is not known.")),
            .. PotNotes.Methods(period),
        ];
    }
}
