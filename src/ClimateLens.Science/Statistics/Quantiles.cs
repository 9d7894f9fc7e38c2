namespace ClimateLens.Science.Statistics;

/// <summary>Sample quantiles.</summary>
public static class Quantiles
{
    /// <summary>The <paramref name="p"/>-quantile of a sample, in the unit of the sample.</summary>
    /// <param name="sortedAscending">The sample, sorted, without NaN.</param>
    /// <param name="p">Share of the sample below the quantile, 0 to 1. [1]</param>
    /// <returns>The quantile; NaN for an empty sample.</returns>
    /// <remarks>
    /// <para><b>Formula:</b> <c>h = (n - 1)p</c>; linear between the values of rank ⌊h⌋ and ⌊h⌋ + 1, counted from 0.</para>
    /// <para><b>Source:</b> [HF96] definition 7.</para>
    /// </remarks>
    public static double Of(ReadOnlySpan<double> sortedAscending, double p)
    {
        Guard.Within(Guard.Finite(p), 0, 1, "(share)");
        if (sortedAscending.IsEmpty)
        {
            return double.NaN;
        }

        double rank = (sortedAscending.Length - 1) * p;
        int below = (int)Math.Floor(rank);
        int above = Math.Min(below + 1, sortedAscending.Length - 1);
        double low = sortedAscending[below];
        return low + ((rank - below) * (sortedAscending[above] - low));
    }
}
