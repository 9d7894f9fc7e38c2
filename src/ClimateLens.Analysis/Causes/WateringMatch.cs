using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Matching;
using ClimateLens.Science.Statistics;
using Interval = ClimateLens.Science.Statistics.Interval;

namespace ClimateLens.Analysis.Causes;

/// <summary>What waterings over the leaves did to the humidity of the house, by comparison and by the balance.</summary>
/// <param name="Measured">By comparison with alike stretches without watering.</param>
/// <param name="Modelled">What the balance gives for the same waterings. [g/m³]</param>
/// <param name="Learned">What the learned response gives for them: the value, with what two halves of the days give by themselves. [g/m³]</param>
internal sealed record WateringMatch(MatchedEffect Measured, Interval Modelled, Interval Learned)
{
    private const int ModelDraws = 40;

    /// <summary>Whether both ranges have a point in common; null where there is nothing to compare.</summary>
    public bool? Agrees => Measured.Matched < MovingBlockBootstrap.FewestValues || double.IsNaN(Measured.Effect.Low + Modelled.Low) ? null
        : Measured.Effect.Low <= Modelled.High && Modelled.Low <= Measured.Effect.High;

    /// <summary>Compares.</summary>
    /// <param name="hours">The period and the weeks before.</param>
    /// <param name="balance">The balance fitted to the weeks before.</param>
    public static WateringMatch Of(AlikeHours hours, HouseBalance balance)
    {
        BalanceInputs all = hours.All;
        MatchedEffect measured = hours.EffectOf(hours.Events.Where(e => CutOff.Wets(e) == true));
        MatchedEvent[] compared = [.. measured.Events.Where(e => e.Outcome == MatchOutcome.Matched)];
        return !balance.Fit.IsFitted || compared.Length == 0
            ? new WateringMatch(measured, Interval.Unknown, Interval.Unknown)
            : new WateringMatch(measured, Model(all, balance.Fit, compared, hours.Design), balance.Learned is LearnedResponse learned ? Learn(all, learned, compared, hours.Design) : Interval.Unknown);
    }

    /// <summary>The same mean over the same waterings: the balance with all water less the balance without.</summary>
    private static Interval Model(BalanceInputs all, BalanceFit fit, MatchedEvent[] compared, MatchDesign design)
    {
        int times = BalanceFit.JoinedSteps(all.StepHours);
        PreparedReplay with = new(all, fit.Terms, times), without = new(Dry(all), fit.Terms, times);
        SeededRandom random = new(design.Seed);
        double[][] sets = [fit.Parameters(), .. Enumerable.Range(0, ModelDraws).Select(_ => fit.Draw(random))];
        double[] means = [.. sets.Chunk(PreparedReplay.AtOnce).SelectMany(Means)];
        return Interval.OfDraws(means[0], means[1..].Where(double.IsFinite).ToArray());

        IEnumerable<double> Means(double[][] parameters)
        {
            with.RunAll(parameters);
            without.RunAll(parameters);
            return parameters.Select((_, set) => MeanRise(Difference(with.Humidity(set), without.Humidity(set)), compared, times, design, all.StepHours * times));
        }
    }

    private static double[] Difference(ReadOnlySpan<double> with, ReadOnlySpan<double> without)
    {
        double[] effect = with.ToArray();
        for (int i = 0; i < effect.Length; i++)
        {
            effect[i] -= without[i];
        }

        return effect;
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
