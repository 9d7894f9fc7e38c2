using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Matching;
using ClimateLens.Science.Statistics;
using NodaTime;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Causes;

/// <summary>What waterings over the leaves did to the humidity of the house, by comparison and by the balance.</summary>
/// <param name="Measured">By comparison with alike stretches without watering.</param>
/// <param name="Modelled">What the balance gives for the same waterings. [g/m³]</param>
/// <param name="Learned">What the learned response gives for them: the value, with what two halves of the days give by themselves. [g/m³]</param>
internal sealed record WateringMatch(MatchedEffect Measured, Interval Modelled, Interval Learned)
{
    private const int ModelDraws = 40;
    private const int MatchDraws = 400;

    /// <summary>Whether both ranges have a point in common; null where there is nothing to compare.</summary>
    public bool? Agrees => Measured.Matched < MovingBlockBootstrap.FewestValues || double.IsNaN(Measured.Effect.Low + Modelled.Low) ? null
        : Measured.Effect.Low <= Modelled.High && Modelled.Low <= Measured.Effect.High;

    /// <summary>Compares.</summary>
    /// <param name="before">The weeks before the period.</param>
    /// <param name="house">The period.</param>
    /// <param name="balance">The balance fitted to the weeks before.</param>
    public static WateringMatch Of(HousePeriod before, HousePeriod house, HouseBalance balance)
    {
        BalanceInputs all = BalanceColumns.Joined(balance.Inputs, BalanceColumns.Of(house, house.FirstStep));
        TimeAxis axis = house.Frame.Axis with { Start = before.Frame.Axis.StartOf(before.FirstStep), Count = all.Steps };
        bool[] treated = Treated(all);
        int[] starts = Starts([.. before.Events, .. house.Events.Where(e => e.Start >= house.Input.Period.Start)], axis);
        MatchDesign design = new() { StepHours = axis.Step.TotalHours, Draws = MatchDraws, Seed = unchecked((ulong)Uncertainty.BiasDraws.Seed) };
        MatchedEffect measured = EventMatching.Of(all.HumidityGm3, treated, starts, Covariates(all, axis), design);
        MatchedEvent[] compared = [.. measured.Events.Where(e => e.Outcome == MatchOutcome.Matched)];
        return !balance.Fit.IsFitted || compared.Length == 0
            ? new WateringMatch(measured, Interval.Unknown, Interval.Unknown)
            : new WateringMatch(measured, Model(all, balance.Fit, compared, design), balance.Learned is LearnedResponse learned ? Learn(all, learned, compared, design) : Interval.Unknown);
    }

    private static bool[] Treated(BalanceInputs all)
    {
        bool[] treated = new bool[all.Steps];
        for (int i = 0; i < treated.Length; i++)
        {
            treated[i] = all.LeafWetted.Span[i] > 0 || all.FloorWetted.Span[i] > 0;
        }

        return treated;
    }

    /// <summary>Starts of rounds of waterings that wet leaves, those less than an hour apart joined.</summary>
    private static int[] Starts(IEnumerable<WateringEvent> events, TimeAxis axis)
        =>
        [
            .. WateringRound.Of(events.Where(e => CutOff.Wets(e) == true).OrderBy(e => e.Start))
                .Select(r => axis.IndexOf(r.Round.Start))
                .Where(i => i >= 0 && i < axis.Count)
                .Distinct(),
        ];

    private static List<MatchCovariate> Covariates(BalanceInputs all, TimeAxis axis)
    {
        double[] hour = [.. Enumerable.Range(0, all.Steps).Select(i => axis.StartOf(i).InZone(axis.Zone).TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour)];
        List<MatchCovariate> covariates = [new("hour of the day", CovariateKind.HourOfDay, hour), new("humidity outside", CovariateKind.Throughout, all.OutsideGm3)];
        Add("sun", CovariateKind.Throughout, all.SunWm2);
        Add("wind", CovariateKind.Throughout, all.WindMs);
        Add("vents", CovariateKind.Before, all.Vent);
        return covariates;

        void Add(string name, CovariateKind kind, ReadOnlyMemory<double> values)
        {
            if (!values.IsEmpty)
            {
                covariates.Add(new MatchCovariate(name, kind, values));
            }
        }
    }

    /// <summary>The same mean over the same waterings: the balance with all water less the balance without.</summary>
    private static Interval Model(BalanceInputs all, BalanceFit fit, MatchedEvent[] compared, MatchDesign design)
    {
        int times = BalanceFit.JoinedSteps(all.StepHours);
        PreparedReplay with = new(all, fit.Terms, times), without = new(Dry(all), fit.Terms, times);
        SeededRandom random = new(design.Seed);
        double value = Mean(fit.Parameters());
        return Interval.OfDraws(value, Enumerable.Range(0, ModelDraws).Select(_ => Mean(fit.Draw(random))).Where(double.IsFinite).ToArray());

        double Mean(double[] parameters)
        {
            double[] effect = with.Run(parameters).ToArray();
            ReadOnlySpan<double> plain = without.Run(parameters);
            for (int i = 0; i < effect.Length; i++)
            {
                effect[i] -= plain[i];
            }

            return MeanRise(effect, compared, times, design, all.StepHours * times);
        }
    }

    /// <summary>The same by the learned response.</summary>
    private static Interval Learn(BalanceInputs all, LearnedResponse learned, MatchedEvent[] compared, MatchDesign design)
    {
        int times = BalanceFit.JoinedSteps(all.StepHours);
        (double value, double one, double other) = learned.Effect(
            ThinnedInputs.Of(all, times), ThinnedInputs.Of(Dry(all), times), effect => MeanRise(effect, compared, times, design, all.StepHours * times));
        return new Interval(value, Math.Min(value, Math.Min(one, other)), Math.Max(value, Math.Max(one, other)));
    }

    private static BalanceInputs Dry(BalanceInputs all) => all with { LeafWetted = new double[all.Steps], FloorWetted = new double[all.Steps] };

    private static double MeanRise(double[] effect, MatchedEvent[] compared, int times, MatchDesign design, double stepHours)
    {
        double[] rises = [.. compared.Select(e => Rise(effect, e.Start / times, design, stepHours)).Where(double.IsFinite)];
        return rises.Length == 0 ? double.NaN : rises.Average();
    }

    private static double Rise(double[] effect, int start, MatchDesign design, double stepHours)
    {
        int before = (int)Math.Round(design.BeforeHours / stepHours), after = (int)Math.Round(design.AfterHours / stepHours);
        return start - before < 0 || start + after > effect.Length ? double.NaN
            : effect[start..(start + after)].Average() - effect[(start - before)..start].Average();
    }
}
