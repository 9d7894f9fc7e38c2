namespace ClimateLens.Science.Matching;

/// <summary>Something in which stretches that are compared should be alike.</summary>
/// <param name="Name">Name, given back in the result.</param>
/// <param name="Kind">Over which time it counts.</param>
/// <param name="Values">One value a step, in any unit; NaN for not known.</param>
public sealed record MatchCovariate(string Name, CovariateKind Kind, ReadOnlyMemory<double> Values);
