using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Fifth stage: hours with leaves wet or near the dew point at a temperature that suits grey mould, and how sure each one is.
/// The readings are taken as they are, then 200 times with errors drawn from the stated accuracy of the sensors and the range of what is
/// assumed; an hour counts as a risk hour when it is one in at least half of the draws. Method, sources and error: docs/science/risk-hours.md.
/// </summary>
public static class RiskHours
{
    /// <summary>Fewer hours with data than this (or than half of a shorter period) carry no total. Choice of this project. [h]</summary>
    public const int FewestHours = 24;

    /// <summary>Finds the risk hours of run-in and period.</summary>
    public static RiskState Find(HousePeriod period)
    {
        HourTable hours = HourTable.Of(period);
        BiasDraws draws = BiasDraws.For(period);
        FoliageDraws several = new(() => new FoliageHours(period, hours));
        FoliageHours foliage = several.First;
        RiskTally tally = new(hours);
        double[][] hourly = HourlyErrors(hours);
        several.Run(BiasDraws.Count, (draw, one) => one.Take(draws.At(draw), draws.HourlyHumidityPct, hourly[draw]), (draw, one) => tally.Add(draw, one.Risk));

        Estimate? total = Trust.MostlyDoubtful(period, period.FirstStep, period.Frame.Axis.Count) is null ? Total(tally, hours, hours.FirstOfPeriod, hours.Count) : null;
        ImmutableArray<ErrorShare> errors = total is null ? [] : ErrorShares.Of(period, hours, several);
        foliage.WithoutError();
        return new RiskState(hours, draws, tally.Probabilities())
        {
            LeafC = foliage.LeafC,
            DewPointC = foliage.DewPointC,
            MarginK = foliage.MarginK,
            Wet = foliage.Wet,
            LeafStepC = foliage.LeafStepC,
            WetStep = foliage.WetStep,
            FilmStepMm = foliage.FilmStepMm,
            Total = total,
            TotalBefore = Before(tally, hours, period),
            Errors = errors,
            CutOffs = new CutOffs(period, foliage),
            Drying = new DryingLeft(period, foliage),
        };
    }

    /// <summary>
    /// One number in [-1, 1) for every draw and hour. They belong to the hour itself and not to its place in the period, so that
    /// a week has the same risk hours on its own page and as "the week before" on the next.
    /// </summary>
    internal static double[][] HourlyErrors(HourTable hours)
    {
        double[][] errors = new double[BiasDraws.Count][];
        for (int draw = 0; draw < errors.Length; draw++)
        {
            errors[draw] = new double[hours.Count];
        }

        for (int h = 0; h < hours.Count; h++)
        {
            SeededRandom random = new(unchecked((ulong)(BiasDraws.Seed + hours.StartOf(h).ToUnixTimeSeconds())));
            for (int draw = 0; draw < errors.Length; draw++)
            {
                errors[draw][h] = (2 * random.NextDouble()) - 1;
            }
        }

        return errors;
    }

    private static Estimate? Total(RiskTally tally, HourTable hours, int from, int to)
        => tally.HoursWithData(from, to) >= Math.Min(FewestHours, (to - from + 1) / 2) && to > from
            ? tally.Total(from, to)
            : null;

    /// <summary>
    /// The seven local days before, 167 to 169 hours, from the run-in; only when all of them are loaded, at least half of
    /// their hours have data, and no more than half of these are doubtful.
    /// </summary>
    private static Estimate? Before(RiskTally tally, HourTable hours, HousePeriod period)
    {
        DateTimeZone zone = period.Frame.Axis.Zone;
        LocalDate first = period.Input.Period.Start.InZone(zone).Date.PlusDays(-7);
        int from = hours.IndexOf(zone.AtStartOfDay(first).ToInstant()), to = hours.FirstOfPeriod;
        return from >= 0 && 2 * tally.HoursWithData(from, to) >= to - from
            && Trust.MostlyDoubtful(period, from * period.StepsPerHour, period.FirstStep) is null
            ? tally.Total(from, to)
            : null;
    }
}
