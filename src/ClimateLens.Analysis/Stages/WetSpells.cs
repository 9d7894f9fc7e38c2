using System.Collections.Immutable;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Infection;
using NodaTime;
using Spell = ClimateLens.Analysis.Reviews.WetPeriod;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// The wet periods that reach into the period, from the readings as they are, each with the index of Broome et al. 1995: weather that favours
/// grey mould. Short dry breaks do not end one. Method, sources and error: docs/science/infection.md.
/// </summary>
public static class WetSpells
{
    /// <summary>Finds them in time order; null when in less than half of the period's steps it is known whether leaves were wet.</summary>
    public static ImmutableArray<Spell>? Find(HousePeriod period, RiskState risk)
    {
        TimeAxis axis = period.Frame.Axis;
        int known = risk.WetStep.AsSpan(period.FirstStep).ToArray().Count(double.IsFinite);
        return 2 * known < axis.Count - period.FirstStep ? null : [.. Within(period, risk, WetPeriodRules.Broome).Select(p => Scored(axis, p))];
    }

    /// <summary>The wet periods that reach into the period, by other rules of when one ends.</summary>
    internal static WetPeriod[] Within(HousePeriod period, RiskState risk, WetPeriodRules rules)
    {
        WetPeriod[] found = new WetPeriod[(period.Frame.Axis.Count / 2) + 1];
        int count = WetPeriods.Find(risk.WetStep, risk.LeafStepC, period.Frame.Axis.Step.TotalSeconds, rules, found);
        return [.. found.Take(count).Where(p => p.End > period.FirstStep)];
    }

    private static Spell Scored(TimeAxis axis, WetPeriod period)
    {
        BroomeScore score = Broome.Of(period);
        OffsetDateTime At(int step) => axis.StartOf(step).InZone(axis.Zone).ToOffsetDateTime();
        double? temperature = double.IsNaN(period.MeanTemperatureC) ? null : Math.Round(period.MeanTemperatureC, 2);
        return new Spell(At(period.Start), At(period.End), Math.Round(period.WetHours, 2), temperature, double.IsFinite(score.Index) ? Math.Round(score.Index, 3) : null, GradeWord(score.Grade))
        {
            OutsideFit = score.OutsideFit,
            UnknownHours = Math.Round(period.UnknownHours, 2),
            Open = period.Open,
        };
    }

    private static string? GradeWord(Grade grade) => grade switch
    {
        Grade.None => "none",
        Grade.Low => "low",
        Grade.Moderate => "moderate",
        Grade.High => "high",
        _ => null,
    };
}
