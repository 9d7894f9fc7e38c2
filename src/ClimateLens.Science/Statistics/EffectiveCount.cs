namespace ClimateLens.Science.Statistics;

/// <summary>How many unrelated values a run of related ones is worth.</summary>
/// <remarks>
/// <b>Formula:</b> <c>n (1 - ρ)/(1 + ρ)</c>, ρ the correlation of each value with the one before, taken as 0 where negative; at least 1.
/// <b>Source:</b> [BH46], from memory. <b>Range:</b> values that forget the past at a steady rate; a daily rhythm makes it a rough guide.
/// </remarks>
public static class EffectiveCount
{
    /// <summary>Effective number of the known values of a run; 0 for none. [1]</summary>
    /// <param name="values">Values in order of time; NaN for not known.</param>
    public static double Of(ReadOnlySpan<double> values)
    {
        (int count, double mean) = Mean(values);
        double square = 0, product = 0;
        int pairs = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double here = values[i] - mean;
            square += double.IsNaN(here) ? 0 : here * here;
            double pair = i > 0 ? here * (values[i - 1] - mean) : double.NaN;
            (product, pairs) = double.IsNaN(pair) ? (product, pairs) : (product + pair, pairs + 1);
        }

        return pairs == 0 || square == 0 ? count : Of(count, product / pairs / (square / count));
    }

    /// <summary>Effective number by the correlation. [1]</summary>
    /// <param name="count">Number of values, 0 or more.</param>
    /// <param name="correlation">Correlation of each with the one before, -1 to 1. [1]</param>
    public static double Of(int count, double correlation)
    {
        double rho = Math.Clamp(correlation, 0, 1);
        return Math.Max(Math.Min(1, count), count * (1 - rho) / (1 + rho));
    }

    private static (int Count, double Mean) Mean(ReadOnlySpan<double> values)
    {
        int count = 0;
        double sum = 0;
        foreach (double value in values)
        {
            (count, sum) = double.IsNaN(value) ? (count, sum) : (count + 1, sum + value);
        }

        return (count, sum / count);
    }
}
