using System.Collections.Immutable;

namespace ClimateLens.Science.Statistics;

/// <summary>Means of groups of which some are known well and some hardly, each drawn towards the mean of all as far as it is uncertain itself.</summary>
/// <param name="Mean">Mean over groups; NaN without a known group.</param>
/// <param name="MeanVariance">Variance of that mean.</param>
/// <param name="BetweenVariance">Variance of the groups' true means, 0 or above.</param>
/// <param name="Groups">Each group's mean and variance, in step with the input.</param>
/// <remarks>
/// <para><b>Formula:</b> with <c>w = 1/v</c>: <c>τ² = max(0, (Σ w (y - m)² - (k - 1))/(Σ w - Σ w²/Σ w))</c>, <c>m</c> weighted by w; mean μ weighted by <c>1/(v + τ²)</c>;
/// a group's mean <c>μ + τ²/(τ² + v) (y - μ)</c>. A group that was not measured gets μ. <b>Source:</b> [DL86] (memory), shrinking as in any normal model with a normal prior.</para>
/// <para><b>Error:</b> τ² from few groups is rough, and 0 with two that happen to agree; the variances take it as known.</para>
/// </remarks>
public sealed record ShrunkMeans(double Mean, double MeanVariance, double BetweenVariance, ImmutableArray<(double Mean, double Variance)> Groups)
{
    /// <summary>Shrinks the means of groups.</summary>
    /// <param name="means">Means of the groups; NaN for one that was not measured.</param>
    /// <param name="variances">Variance of each mean, above 0 where it was measured.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public static ShrunkMeans Of(ReadOnlySpan<double> means, ReadOnlySpan<double> variances)
    {
        Guard.SameLength(means.Length, variances.Length);
        double[] y = means.ToArray(), v = variances.ToArray();
        int[] known = [.. Enumerable.Range(0, y.Length).Where(i => double.IsFinite(y[i] + v[i]) && v[i] > 0)];
        double between = Between([.. known.Select(i => (y[i], v[i]))]);
        double weight = known.Sum(i => 1 / (v[i] + between));
        double mean = known.Sum(i => y[i] / (v[i] + between)) / weight; // NaN without a known group
        double meanVariance = 1 / weight;
        return new(mean, meanVariance, between, [.. y.Select((value, i) => known.Contains(i) ? Shrunk(value, v[i], between, mean, meanVariance) : (mean, between + meanVariance))]);
    }

    private static (double Mean, double Variance) Shrunk(double value, double variance, double between, double mean, double meanVariance)
    {
        double own = between / (between + variance);
        return (mean + (own * (value - mean)), (own * variance) + ((1 - own) * (1 - own) * meanVariance));
    }

    private static double Between((double Mean, double Variance)[] known)
    {
        double weight = known.Sum(k => 1 / k.Variance), squares = known.Sum(k => 1 / (k.Variance * k.Variance));
        double mean = known.Sum(k => k.Mean / k.Variance) / weight;
        double q = known.Sum(k => (k.Mean - mean) * (k.Mean - mean) / k.Variance);
        double scale = weight - (squares / weight);
        return known.Length > 1 && scale > 0 ? Math.Max(0, (q - (known.Length - 1)) / scale) : 0;
    }
}
