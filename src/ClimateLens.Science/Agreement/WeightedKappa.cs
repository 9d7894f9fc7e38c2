namespace ClimateLens.Science.Agreement;

/// <summary>Agreement of two people beyond chance, where near misses count less than far ones.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>κ = 1 - Σ v o / Σ v e</c> with disagreement weights v (0 on the diagonal; |i - j| linear, (i - j)² quadratic), observed shares o and
/// those expected of the margins, e. 1 is perfect, 0 what chance gives, below 0 worse than chance. <b>Source:</b> [COHEN68].</para>
/// <para><b>Standard error:</b> the large-sample form of [FCE69], as the public code of [VCD] has it.</para>
/// <para><b>Range and error:</b> NaN where chance alone would agree fully (both used one and the same level). The standard error is for many independent pairs;
/// below about 30, or where pairs share a round, it is too small (<see cref="GroupedKappa"/>). Kappa hangs on how far the things judged spread: pots that are all alike give a low one.</para>
/// </remarks>
public static class WeightedKappa
{
    /// <summary>Weighted kappa, up to 1; NaN where it has no meaning. [1]</summary>
    /// <param name="table">Counts of both people's levels.</param>
    /// <param name="weights">How disagreements count.</param>
    public static double Of(AgreementTable table, KappaWeights weights) => Of(table, (i, j) => Distance(weights, i, j));

    /// <summary>Weighted kappa by any disagreement weights, 0 for agreement; they need not be symmetric. [1]</summary>
    public static double Of(AgreementTable table, Func<int, int, double> disagreement)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(disagreement);
        double[] rows = table.FirstMargin(), columns = table.SecondMargin();
        double observed = 0, expected = 0, total = table.Total;
        for (int i = 0; i < table.Levels; i++)
        {
            for (int j = 0; j < table.Levels; j++)
            {
                observed += disagreement(i, j) * table[i, j] / total;
                expected += disagreement(i, j) * rows[i] * columns[j];
            }
        }

        return expected > 0 ? 1 - (observed / expected) : double.NaN;
    }

    /// <summary>Large-sample standard error of kappa for a table of counts. [1]</summary>
    /// <param name="table">Counts of pairs, not shares.</param>
    /// <param name="weights">How disagreements count.</param>
    public static double StandardError(AgreementTable table, KappaWeights weights)
    {
        double kappa = Of(table, weights);
        double[] rows = table.FirstMargin(), columns = table.SecondMargin();
        double widest = Distance(weights, 0, table.Levels - 1), total = table.Total;
        double Agreement(int i, int j) => 1 - (Distance(weights, i, j) / widest);

        double expected = 0;
        double[] meanOfRow = new double[table.Levels], meanOfColumn = new double[table.Levels];
        for (int i = 0; i < table.Levels; i++)
        {
            for (int j = 0; j < table.Levels; j++)
            {
                expected += Agreement(i, j) * rows[i] * columns[j];
                meanOfRow[i] += Agreement(i, j) * columns[j];
                meanOfColumn[j] += Agreement(i, j) * rows[i];
            }
        }

        double sum = 0;
        for (int i = 0; i < table.Levels; i++)
        {
            for (int j = 0; j < table.Levels; j++)
            {
                double part = Agreement(i, j) - ((meanOfRow[i] + meanOfColumn[j]) * (1 - kappa));
                sum += table[i, j] / total * part * part;
            }
        }

        double centre = kappa - (expected * (1 - kappa));
        return Math.Sqrt(Math.Max(0, sum - (centre * centre)) / total) / (1 - expected);
    }

    private static double Distance(KappaWeights weights, int i, int j) => weights switch
    {
        KappaWeights.None => i == j ? 0 : 1,
        KappaWeights.Linear => Math.Abs(i - j),
        _ => (double)(i - j) * (i - j),
    };
}
