using System.Collections.Immutable;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How alike people grade the same pots, over the period and the weeks before it.</summary>
/// <param name="Graders">People who signed checks.</param>
/// <param name="Pairs">Every two who graded the same pots within an hour, most pairs first.</param>
/// <param name="AgainstWeights">Each person against the pots' weights; empty without weights.</param>
/// <param name="PotsNeeded">Pots of a side-by-side round that would find a difference of half a level; null where every two people have as many pairs.</param>
public sealed record AgreementReport(ImmutableArray<string> Graders, ImmutableArray<GraderPair> Pairs, ImmutableArray<GraderAgainstWeights> AgainstWeights, int? PotsNeeded);

/// <summary>Two people on the same pots.</summary>
/// <param name="First">One.</param>
/// <param name="Second">The other.</param>
/// <param name="Pots">Pots that both graded within an hour.</param>
/// <param name="Rounds">Rounds that these belong to.</param>
/// <param name="KappaLinear">Linearly weighted kappa over all levels from 1 to 5 in halves; null without a range. [1]</param>
/// <param name="KappaQuadratic">Quadratically weighted kappa; null likewise. [1]</param>
/// <param name="Bias">First minus second; null below two pots. [levels]</param>
/// <param name="Deviation">Standard deviation of the differences; null likewise. [levels]</param>
/// <param name="PotsNeeded">Pots that a side-by-side round needs.</param>
/// <param name="Confusion">How often each pair of levels came, in order.</param>
public sealed record GraderPair(
    string First,
    string Second,
    int Pots,
    int Rounds,
    Estimate? KappaLinear,
    Estimate? KappaQuadratic,
    Estimate? Bias,
    double? Deviation,
    int PotsNeeded,
    ImmutableArray<LevelPair> Confusion);

/// <summary>Pots to which the first gave one level and the second another or the same.</summary>
public sealed record LevelPair(double First, double Second, int Pots);

/// <summary>A person's levels less those that weights tell.</summary>
public sealed record GraderAgainstWeights(string Grader, int Pots, Estimate? Bias);
