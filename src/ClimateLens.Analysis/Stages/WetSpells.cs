using System.Collections.Immutable;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Infection;
using NodaTime;
using WetPeriod = ClimateLens.Analysis.Reviews.WetPeriod;

namespace ClimateLens.Analysis.Stages;

/// <summary>The wet periods that reach into the period, from the readings as they are; short dry breaks do not end one.</summary>
public static class WetSpells
{
    /// <summary>Finds them in time order; null when in less than half of the period's steps it is known whether leaves were wet.</summary>
    public static ImmutableArray<WetPeriod>? Find(HousePeriod period, RiskState risk)
    {
        TimeAxis axis = period.Frame.Axis;
        int known = risk.WetStep.AsSpan(period.FirstStep).ToArray().Count(double.IsFinite);
        if (2 * known < axis.Count - period.FirstStep)
        {
            return null;
        }

        Science.Infection.WetPeriod[] found = new Science.Infection.WetPeriod[(axis.Count / 2) + 1];
        int count = WetPeriods.Find(risk.WetStep, risk.LeafStepC, axis.Step.TotalSeconds, WetPeriodRules.Broome, found);
        OffsetDateTime At(int step) => axis.StartOf(step).InZone(axis.Zone).ToOffsetDateTime();
        return
        [
            .. found.Take(count).Where(p => p.End > period.FirstStep)
                .Select(p => new WetPeriod(At(p.Start), At(p.End), Math.Round(p.WetHours, 2), Math.Round(p.MeanTemperatureC, 2), null, null)),
        ];
    }
}
