using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Truth;
using ClimateLens.Nursery;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>Hours that a change would have avoided, as the simulator run again knows them and as the review tells them.</summary>
/// <param name="Seed">Seed of the nursery.</param>
/// <param name="House">House id.</param>
/// <param name="Week">ISO week.</param>
/// <param name="WhatIf">Name of the what-if.</param>
/// <param name="TrueRisk">True risk hours of the week. [h]</param>
/// <param name="Truth">True hours avoided. [h]</param>
/// <param name="Found">What the review says; null where it says that it cannot tell.</param>
/// <param name="LateShare">Share of late watering in the review; null where it says that it cannot tell. [h]</param>
/// <param name="WeatherShare">Share of the weather in the review. [h]</param>
/// <param name="Risk">Risk hours in the review. [h]</param>
public sealed record RecoveredChange(ulong Seed, string House, string Week, string WhatIf, int TrueRisk, int Truth, Estimate? Found, double? LateShare, double? WeatherShare, double Risk)
{
    /// <summary>Whether the value is within 25 % or two hours of the truth.</summary>
    public bool IsNear => Math.Abs(Found!.Value - Truth) <= Math.Max(2, 0.25 * Math.Abs(Truth));

    /// <summary>Whether the range holds the truth.</summary>
    public bool Covers => Found!.Low <= Truth && Truth <= Found.High;
}

/// <summary>Reviews simulated weeks and holds their what-ifs to the simulator run again with something done otherwise.</summary>
public static class CausesRecovery
{
    private const double AccuracyK = 0.5, AccuracyPct = 3;

    private static readonly (string Name, Intervention What)[] Changes =
    [
        ("waterBeforeCutOff", Intervention.WaterBeforeCutOff),
        ("waterOffLeaves", Intervention.WaterOffLeaves),
        ("widerSpacing", Intervention.WiderSpacing),
        ("heatAndVentBeforeSunrise", Intervention.HeatAndVentBeforeSunrise),
        ("all", Intervention.All),
    ];

    /// <summary>All what-ifs of the given weeks of both houses of one seed.</summary>
    /// <param name="seed">Seed of weather, habits, noise, natures and biases.</param>
    /// <param name="biased">Whether sensors are off by amounts drawn from their accuracies.</param>
    /// <param name="weeks">ISO weeks with four weeks before them.</param>
    public static IEnumerable<RecoveredChange> Of(ulong seed, bool biased, IReadOnlyList<string> weeks)
    {
        NurseryRun run = NurseryRun.Of(seed, house => HouseNature.Drawn(seed, house));
        SeededRandom random = new(seed * 7919);
        foreach (HouseRun plain in run.Houses)
        {
            double Bias(double accuracy) => (biased ? accuracy : 0) * random.NextUniform(-1, 1);
            HouseRun house = plain with { Options = plain.Options with { TemperatureBiasK = Bias(AccuracyK), HumidityBiasPct = Bias(AccuracyPct) } };
            foreach (string week in weeks)
            {
                HouseInput input = SimulatedWeek.Of(run, house, week, null, Past.HistoryDays);
                Review review = ReviewPipeline.Run(input);
                foreach (RecoveredChange change in Compared(run, house, input, review))
                {
                    yield return change with { Week = week };
                }
            }
        }
    }

    private static IEnumerable<RecoveredChange> Compared(NurseryRun run, HouseRun house, HouseInput input, Review review)
    {
        DateTimeZone zone = GannetRow.Zone;
        int from = house.Calendar.MinuteOf(input.Period.Start), to = house.Calendar.MinuteOf(input.Period.End);
        int truth = TrueRisk.Count(house, from, to);
        int sunriseHour = review.Hours.First(h => !h.Night).Start.Hour;
        InterventionPlan plan = new(
            input.Period.Start.InZone(zone).Date, input.Period.End.InZone(zone).Date, day => CutOffMinute(review, day, sunriseHour),
            SpacingFactor: 1.25, DawnFromHour: sunriseHour - 3, DawnUntilHour: sunriseHour, MinimumLeePct: 10);
        foreach ((string name, Intervention what) in Changes)
        {
            int left = TrueRisk.Count(plan.Replayed(house, zone, run.Weather, run.Seed, what), from, to);
            yield return new RecoveredChange(
                run.Seed,
                house.Options.Id,
                "",
                name,
                truth,
                truth - left,
                review.WhatIfs?.FirstOrDefault(w => w.Name == name)?.RiskHoursAvoided,
                review.Causes?.FirstOrDefault(c => c.Name == "lateWatering")?.RiskHours.Value,
                review.Causes?.FirstOrDefault(c => c.Name == "weather")?.RiskHours.Value,
                review.RiskHours?.Value ?? double.NaN);
        }
    }

    /// <summary>The cut-off that the review names, as a minute of the day; sunrise where no finish of a day lets leaves dry.</summary>
    private static int CutOffMinute(Review review, LocalDate day, int sunriseHour)
        => review.Waterings?.FirstOrDefault(w => w.Start.Date == day && w.WetsLeaves == true) is not Watering watering ? 24 * 60
            : watering.CutOff is OffsetDateTime cutOff ? (cutOff.Hour * 60) + cutOff.Minute
            : 60 * (sunriseHour + 1);
}
