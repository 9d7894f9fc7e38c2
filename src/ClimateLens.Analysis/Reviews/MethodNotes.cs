using System.Collections.Immutable;
using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
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
                $"All sources on one grid of {step} min, the step of the house's main source: means of faster readings, straight lines or the held value between slower ones at most two of their steps apart (65 min at most); the rest are gaps.",
                "choice of this project",
                "No value is made up across a gap; an hour has data when half of its steps have."),
            new(
                "clock",
                "Each source's light, cut off at a small share of a bright day's, has its middle compared with true solar noon, day by day; the median rules, and a change of more than 25 min between days is looked for. Without light, the daily swing of outside temperature.",
                "solar noon: Meeus 1998; method and limits of this project (docs/science/clock.md)",
                "By light a fault of 20 min and more is seen, with steps of half an hour and more or light inside the house of more; by outside temperature only one of 3 h and more."),
            new(
                "quality",
                "Gross range, spike, rate-of-change, flat-line and attenuated-signal tests by elapsed time; zeros without power, changes of unit, dew point over temperature, sensors that part. Failed values are left out, suspect ones used and counted.",
                "U.S. IOOS QARTOD manuals (from memory), limits as listed in docs/science/quality.md",
                "Finds values that cannot be; a steady bias passes."),
            new(
                "second opinion",
                $"Each sensor of temperature or humidity predicted from the others, the hour and the sun: ridge regression, and boosted trees on what it leaves over where they help, learned from up to {SecondOpinion.HistoryDays} days before the period; errors from {SensorFit.Blocks} blocks of days held out in turn. Suspect beyond {Say.Number(UsualError.StepTimes)} times the error that {Say.Number(1000 * UsualError.StepShare)} of 1,000 held-out steps kept to; a shift is a day's median beyond {Say.Number(DayError.Times)} robust standard deviations of the held-out days on {LastingShifts.FewestDays} days in a row, or twice that on one. Nothing within the sensor's accuracy is named.",
                "ridge: Hoerl and Kennard 1970; boosting: Friedman 2001 (both from memory); limits set on simulated weeks (docs/science/learned-check.md)",
                "Cannot tell a faulty sensor from a house that changed, nor see a fault that was there in the weeks before. " + LearnedRates.Sentence),
            new(
                "moist air",
                "Saturation vapour pressure over water in the Magnus form with the coefficients e_w1 of Buck 1981; VPD, dew point by inversion, absolute humidity from vapour pressure.",
                "Buck 1981, J. Appl. Meteorol. 20:1527",
                "At most 0.07 % of saturation vapour pressure from 10 to 35 °C; dew point within 0.02 K of the Hyland-Wexler form; sensor error is far larger."),
            .. LeafNotes.Of(period),
            new(
                "canopy",
                $"Share of the ground that discs of the plants' width hide at the spacing of the nursery file; width by a logistic curve from potting or pinch, first guesses by crop, fitted to the measured widths by least squares. The range holds 5 to 95 % of {CanopyForecast.Draws} curves drawn from the fit; closed from a cover of {Say.Number(GroundCover.Closed)}.",
                "plane geometry; growth numbers by crop from memory (docs/science/canopy.md)",
                "Plants are no discs: 0.03 to 0.06 of cover near closure. Without widths the range is wide; three widths narrow it."),
            new(
                "watering cut-off",
                "Sunset of the local day less the drying hours; leaf-wetting methods only. Fog and hand watering count as wetting leaves.",
                "sunset: Meeus 1998; drying hours as listed",
                "Sunset within a minute on a flat horizon; drying takes from 1 to more than 12 h by sun, air and humidity."),
            new(
                "rise of humidity",
                "Absolute humidity of the hour after a round of waterings less that of the hour before it, with the same draws. Waterings of the house less than an hour apart form a round and share its figures.",
                "definition",
                "A difference, not an effect: sun, vents and heating change in the same hours."),
            new(
                "scouting",
                $"Affected plants by week: each bench's last count of the week, summed. Beside them the risk hours of up to {ScoutedWeeks.Most} weeks of the same crop, worked out like the period's with {Scouting.WeekRisk.Draws} of its draws. Spearman's rank correlation of a count with the risk hours of the week before it, from {Scouting.ScoutingOf.FewestPairs} pairs on.",
                "Spearman 1904 (from memory); range after Bonett and Wright 2000; share of random pairings (docs/science/scouting.md)",
                "An association, not a cause. The range is too narrow for weeks that follow from each other and for few pairs; the lag between infection and a spot is not known."),
        ];
    }
}
