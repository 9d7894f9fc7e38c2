using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Matching;

/// <summary>What events did to an outcome, by comparison with alike stretches without one.</summary>
/// <param name="Effect">Mean over the matched events of their effects, and its 5 to 95 % range; no range below <see cref="MovingBlockBootstrap.FewestValues"/> events.</param>
/// <param name="Curve">The same at each step from <see cref="FirstLag"/> on.</param>
/// <param name="FirstLag">Steps from the start to the first point of the curve; negative.</param>
/// <param name="Events">All events, in order of time.</param>
/// <param name="Candidates">Untreated stretches they could be compared with.</param>
/// <param name="Balance">How alike they are, for each covariate used.</param>
/// <param name="LeftOut">Covariates that were left out of the whole comparison, since they are known too rarely or do not vary.</param>
/// <param name="Placebo">The same where nothing was done.</param>
public sealed record MatchedEffect(
    Interval Effect, IReadOnlyList<Interval> Curve, int FirstLag, IReadOnlyList<MatchedEvent> Events, int Candidates,
    IReadOnlyList<CovariateBalance> Balance, IReadOnlyList<string> LeftOut, PlaceboTest Placebo)
{
    /// <summary>Events that could be compared.</summary>
    public int Matched => Events.Count(e => e.Outcome == MatchOutcome.Matched);
}
