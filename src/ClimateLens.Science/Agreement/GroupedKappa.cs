using ClimateLens.Science.Statistics;
using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Agreement;

/// <summary>Weighted kappa with a range that minds that pairs of one round hang together.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>tanh(atanh κ ± t s/(1 - κ²))</c>; s the greater of the large-sample standard error [FCE69] and that of leaving out one round at a time
/// (the jackknife: <c>s² = (g - 1)/g Σ (κ₋ᵢ - mean)²</c> over g rounds [EFRON82]), widened by <c>√(g/(g - 1))</c>; t of Student's distribution with g - 1 degrees of freedom. In a single
/// round each pair stands for a round of its own: the range is then for pots like those of that round.</para>
/// <para><b>Source:</b> both errors as named (memory); taking the greater one, widening it and the atanh scale are choices of this project.</para>
/// <para><b>Error:</b> on simulated rounds with known graders a 90 % range held the kappa of many pairs in 90 to 96 % of 600 seeds, from three rounds to 25 (a part of it is a test). No range below <see cref="FewestPairs"/>
/// pairs.</para>
/// </remarks>
public static class GroupedKappa
{
    /// <summary>Fewer pairs carry no range. Choice of this project.</summary>
    public const int FewestPairs = 8;

    /// <summary>Weighted kappa and its range. [1]</summary>
    /// <param name="levels">Number of fixed levels, 2 to 50.</param>
    /// <param name="pairs">Both levels of each pot, from 0, and the round they belong to.</param>
    /// <param name="weights">How disagreements count.</param>
    /// <param name="level">Confidence of the range, 0.5 to 0.999; 0.9 leaves 5 % at either side. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">A level or the confidence is impossible.</exception>
    public static Interval Of(int levels, IReadOnlyList<(int First, int Second, int Round)> pairs, KappaWeights weights, double level)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        double confidence = Guard.Within(Guard.Finite(level), 0.5, 0.999, "(share)");
        AgreementTable table = Table(levels, pairs);
        double kappa = pairs.Count == 0 ? double.NaN : WeightedKappa.Of(table, weights);
        if (!double.IsFinite(kappa) || pairs.Count < FewestPairs)
        {
            return new(kappa, double.NaN, double.NaN);
        }

        if (pairs.All(p => p.Round == pairs[0].Round))
        {
            pairs = [.. pairs.Select((p, i) => (p.First, p.Second, i))];
        }

        int[] rounds = [.. pairs.Select(p => p.Round).Distinct()];
        double without = LeavingOut(levels, pairs, rounds, weights);
        double error = Math.Max(WeightedKappa.StandardError(table, weights), double.IsFinite(without) ? without : 0) * Math.Sqrt(rounds.Length / (rounds.Length - 1.0));
        double slope = 1 - (kappa * kappa);
        if (error == 0 || slope <= 0)
        {
            return new(kappa, double.NaN, double.NaN); // all alike: how far the next pairs would part is not known
        }

        double reach = StudentT.InvCDF(0, 1, rounds.Length - 1, (1 + confidence) / 2) * error / slope;
        double middle = Math.Atanh(Math.Clamp(kappa, -0.999999, 0.999999));
        return new(kappa, Math.Tanh(middle - reach), Math.Tanh(middle + reach));
    }

    private static double LeavingOut(int levels, IReadOnlyList<(int First, int Second, int Round)> pairs, int[] rounds, KappaWeights weights)
    {
        double[] left = [.. rounds.Select(round => WeightedKappa.Of(Table(levels, pairs.Where(p => p.Round != round)), weights))];
        double mean = left.Average();
        return Math.Sqrt((left.Length - 1.0) / left.Length * left.Sum(k => (k - mean) * (k - mean)));
    }

    private static AgreementTable Table(int levels, IEnumerable<(int First, int Second, int Round)> pairs)
        => AgreementTable.OfPairs(levels, pairs.Select(p => (p.First, p.Second)));
}
