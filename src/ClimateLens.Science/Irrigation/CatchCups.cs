namespace ClimateLens.Science.Irrigation;

/// <summary>How evenly water came, from what cups or emitters gave in the same time.</summary>
/// <remarks>
/// <para><b>Formulas:</b> distribution uniformity of the low quarter <c>100 · mean of the lowest quarter/mean of all</c>; Christiansen's coefficient <c>100 (1 - Σ|x - m|/(n m))</c>
/// [CHRIST42]; emission uniformity <c>100 (1 - 1.27 CV/√e) · lowest/mean</c> with e emitters a plant [KK74].</para>
/// <para><b>Source:</b> [SPREVAL] for the first two; [KK74] from memory. <b>Range and error:</b> amounts finite and not negative; NaN without any or where all are nought. A dozen
/// cups tell a uniformity to about ±5 points (rule of thumb, no source); CV is the sample's (n - 1).</para>
/// </remarks>
public static class CatchCups
{
    /// <summary>Distribution uniformity of the low quarter, 0 to 100. [%]</summary>
    /// <param name="amounts">What each gave, one unit for all.</param>
    /// <param name="rule">How many cups a quarter is.</param>
    public static double LowQuarterUniformityPct(ReadOnlySpan<double> amounts, QuarterRule rule = QuarterRule.Rounded)
    {
        double[] sorted = Sorted(amounts);
        return 100 * LowMean(sorted, rule) / Mean(sorted);
    }

    /// <summary>Christiansen's coefficient, up to 100. [%]</summary>
    public static double ChristiansenPct(ReadOnlySpan<double> amounts)
    {
        double[] sorted = Sorted(amounts);
        double mean = Mean(sorted);
        return 100 * (1 - (sorted.Sum(x => Math.Abs(x - mean)) / (sorted.Length * mean)));
    }

    /// <summary>Emission uniformity, up to 100; NaN below two emitters. [%]</summary>
    /// <param name="flows">What each emitter gave.</param>
    /// <param name="emittersPerPlant">Emitters that water a plant, 1 to 100.</param>
    public static double EmissionUniformityPct(ReadOnlySpan<double> flows, int emittersPerPlant = 1)
    {
        Guard.Within(emittersPerPlant, 1, 100, "emitters");
        double[] sorted = Sorted(flows);
        if (sorted.Length < 2)
        {
            return double.NaN;
        }

        double mean = Mean(sorted);
        double variation = Math.Sqrt(sorted.Sum(x => (x - mean) * (x - mean)) / (sorted.Length - 1)) / mean;
        return 100 * (1 - (1.27 * variation / Math.Sqrt(emittersPerPlant))) * sorted[0] / mean;
    }

    /// <summary>What follows for a dose meant to be the mean: the mean of the lowest and of the highest quarter, as shares of it. [1]</summary>
    public static (double Low, double High) DoseSpread(ReadOnlySpan<double> amounts, QuarterRule rule = QuarterRule.Rounded)
    {
        double[] sorted = Sorted(amounts);
        double mean = Mean(sorted);
        double low = LowMean(sorted, rule) / mean;
        Array.Reverse(sorted);
        return (low, LowMean(sorted, rule) / mean);
    }

    /// <summary>By what the net amount must be multiplied so that the low quarter gets it: 1 over uniformity. [1]</summary>
    /// <param name="uniformityPct">Distribution uniformity, above 0 up to 100. [%]</param>
    public static double ScheduleFactor(double uniformityPct) => 100 / Guard.AboveUpTo(uniformityPct, 0, 100, "%");

    private static double LowMean(double[] sorted, QuarterRule rule)
    {
        double quarter = rule switch
        {
            QuarterRule.Rounded => Math.Max(1, Math.Round(sorted.Length / 4.0, MidpointRounding.AwayFromZero)),
            QuarterRule.Down => Math.Max(1, sorted.Length / 4),
            _ => sorted.Length / 4.0,
        };
        double sum = 0;
        for (int i = 0; i < Math.Min(sorted.Length, Math.Ceiling(quarter)); i++)
        {
            sum += sorted[i] * Math.Min(1, quarter - i);
        }

        return sum / quarter;
    }

    private static double[] Sorted(ReadOnlySpan<double> amounts)
    {
        double[] sorted = amounts.ToArray();
        foreach (double amount in sorted)
        {
            Guard.Within(Guard.Finite(amount), 0, double.MaxValue, "(amount)");
        }

        Array.Sort(sorted);
        return sorted;
    }

    private static double Mean(double[] amounts)
    {
        double sum = amounts.Sum();
        return sum > 0 ? sum / amounts.Length : double.NaN;
    }
}
