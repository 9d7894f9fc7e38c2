using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Matching;
using NodaTime;

namespace ClimateLens.Analysis.Causes;

/// <summary>A period and the weeks before it, ready to hold waterings against the most similar stretches without one.</summary>
internal sealed class AlikeHours
{
    private const int MatchDraws = 400;

    private readonly bool[] _treated;
    private readonly List<MatchCovariate> _covariates;

    /// <summary>Joins the two.</summary>
    /// <param name="before">The weeks before the period.</param>
    /// <param name="house">The period.</param>
    /// <param name="all">Columns of both, one behind the other.</param>
    public AlikeHours(HousePeriod before, HousePeriod house, BalanceInputs all)
    {
        All = all;
        Axis = house.Frame.Axis with { Start = before.Frame.Axis.StartOf(before.FirstStep), Count = All.Steps };
        Events = [.. before.Events, .. house.Events.Where(e => e.Start >= house.Input.Period.Start)];
        Design = new() { StepHours = Axis.Step.TotalHours, Draws = MatchDraws, Seed = unchecked((ulong)Uncertainty.BiasDraws.Seed) };
        _treated = [.. Enumerable.Range(0, All.Steps).Select(i => All.LeafWetted.Span[i] > 0 || All.FloorWetted.Span[i] > 0)];
        _covariates = Covariates();
    }

    /// <summary>Whether steps are short enough to tell what an hour brings; where they are not, waterings are not compared.</summary>
    public static bool CanCompare(HousePeriod house) => house.Frame.Axis.Step.TotalHours <= MatchDesign.LongestStepHours;

    /// <summary>Columns of both.</summary>
    public BalanceInputs All { get; }

    /// <summary>Their steps.</summary>
    public TimeAxis Axis { get; }

    /// <summary>Waterings of both, in time order.</summary>
    public IReadOnlyList<WateringEvent> Events { get; }

    /// <summary>How they are compared.</summary>
    public MatchDesign Design { get; }

    /// <summary>What some waterings did to the absolute humidity; those less than an hour apart count as one.</summary>
    public MatchedEffect EffectOf(IEnumerable<WateringEvent> inTimeOrder)
    {
        int[] starts = [.. WateringRound.Of(inTimeOrder).Select(r => Axis.IndexOf(r.Round.Start)).Where(i => i >= 0 && i < Axis.Count).Distinct()];
        return EventMatching.Of(All.HumidityGm3, _treated, starts, _covariates, Design);
    }

    private List<MatchCovariate> Covariates()
    {
        double[] hour = [.. Enumerable.Range(0, All.Steps).Select(i => Axis.StartOf(i).InZone(Axis.Zone).TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour)];
        List<MatchCovariate> covariates = [new(Phrase.Of("hour of the day"), CovariateKind.HourOfDay, hour), new(Phrase.Of("humidity outside"), CovariateKind.Throughout, All.OutsideGm3)];
        Add(Phrase.Of("sun"), CovariateKind.Throughout, All.SunWm2);
        Add(Phrase.Of("wind"), CovariateKind.Throughout, All.WindMs);
        Add(Phrase.Of("vents"), CovariateKind.Before, All.Vent);
        return covariates;

        void Add(string name, CovariateKind kind, ReadOnlyMemory<double> values)
        {
            if (!values.IsEmpty)
            {
                covariates.Add(new MatchCovariate(name, kind, values));
            }
        }
    }
}
