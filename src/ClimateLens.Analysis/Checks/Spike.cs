using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Spike test, average form: a value far from the mean of its two neighbours is suspect, twice as far it fails.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> <c>|xᵢ - (xᵢ₋₁ + xᵢ₊₁)/2| &gt; limit</c>.</para>
/// <para><b>Source:</b> [QARTODTS] test 6; from memory.</para>
/// </remarks>
public static class Spike
{
    /// <summary>
    /// How far a neighbour must deviate for a flag to be its doing: a lone spike of height H deviates by H, the values beside
    /// it by H/2 through no fault of their own. [1]
    /// </summary>
    private const double NeighbourRatio = 1.5;

    /// <summary>Flags each value: 4 or 3 when beyond a limit, 1 within, 2 at the ends and beside a gap, 9 for NaN.</summary>
    /// <param name="values">Values on a regular grid. [any unit]</param>
    /// <param name="suspect">Limit above which a value is suspect; infinite: none. [unit of values]</param>
    /// <param name="fail">Limit above which a value fails; infinite: none. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Test(ReadOnlySpan<double> values, double suspect, double fail, Span<QualityFlag> flags)
    {
        for (int i = 0; i < values.Length; i++)
        {
            flags[i] = FlagOf(values[i], DeviationAt(values, i), suspect, fail);
        }
    }

    /// <summary>
    /// The differential form: a value is as far out as the smaller of the steps to its two neighbours, where these go in opposite
    /// directions; else not at all. Not used in reviews, since it misses a spike on a slope.
    /// </summary>
    /// <param name="values">Values on a regular grid. [any unit]</param>
    /// <param name="suspect">Limit above which a value is suspect; infinite: none. [unit of values]</param>
    /// <param name="fail">Limit above which a value fails; infinite: none. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void TestDifferential(ReadOnlySpan<double> values, double suspect, double fail, Span<QualityFlag> flags)
    {
        for (int i = 0; i < values.Length; i++)
        {
            double before = i == 0 ? double.NaN : values[i] - values[i - 1], after = i == values.Length - 1 ? double.NaN : values[i + 1] - values[i];
            double deviation = double.IsNaN(before + after) ? double.NaN : before * after < 0 ? Math.Min(Math.Abs(before), Math.Abs(after)) : 0;
            flags[i] = FlagOf(values[i], deviation, suspect, fail);
        }
    }

    /// <summary>Gives back to the values beside a lone spike the flag that only the spike has cost them.</summary>
    /// <param name="values">The values tested. [any unit]</param>
    /// <param name="flags">Flags of <see cref="Test"/>; those beside a spike become 2.</param>
    public static void SpareNeighbours(ReadOnlySpan<double> values, Span<QualityFlag> flags)
    {
        for (int i = 1; i < values.Length - 1; i++)
        {
            if (flags[i] is QualityFlag.Suspect or QualityFlag.Fail)
            {
                double own = DeviationAt(values, i) * NeighbourRatio;
                if (DeviationAt(values, i - 1) >= own || DeviationAt(values, i + 1) >= own)
                {
                    flags[i] = QualityFlag.NotEvaluated;
                }
            }
        }
    }

    private static QualityFlag FlagOf(double value, double deviation, double suspect, double fail)
        => double.IsNaN(value) ? QualityFlag.Missing
            : double.IsNaN(deviation) ? QualityFlag.NotEvaluated
            : deviation > fail ? QualityFlag.Fail
            : deviation > suspect ? QualityFlag.Suspect
            : QualityFlag.Pass;

    private static double DeviationAt(ReadOnlySpan<double> values, int i)
        => i <= 0 || i >= values.Length - 1 ? double.NaN : Math.Abs(values[i] - ((values[i - 1] + values[i + 1]) / 2));
}
