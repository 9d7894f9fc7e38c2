using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Statistics;

/// <summary>How far a model misses what was measured, in the unit of the columns.</summary>
/// <param name="Count">Steps in which both are known.</param>
/// <param name="EffectiveCount">Unrelated steps that these are worth.</param>
/// <param name="Bias">Mean of measured minus modelled and its 5 to 95 % range; no range below two unrelated steps.</param>
/// <param name="Rmse">Root mean square of measured minus modelled; NaN without steps.</param>
/// <param name="MeanAbsolute">Mean size of measured minus modelled; NaN without steps.</param>
/// <remarks>
/// <b>Formula:</b> range <c>bias ± t √(variance/n_eff)</c>, t of Student's distribution with n_eff - 1 degrees of freedom [GUM08], n_eff of
/// <see cref="Statistics.EffectiveCount"/>. <b>Error:</b> the bias holds that of both sensors: it says how far model and sensor part, not which is right.
/// </remarks>
public readonly record struct ModelScore(int Count, double EffectiveCount, Interval Bias, double Rmse, double MeanAbsolute)
{
    /// <summary>Scores a model.</summary>
    /// <param name="measured">Measured values in order of time; NaN for not known.</param>
    /// <param name="modelled">Modelled values.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <remarks>To score nights alone, give NaN by day.</remarks>
    public static ModelScore Of(ReadOnlySpan<double> measured, ReadOnlySpan<double> modelled)
    {
        Guard.SameLength(measured.Length, modelled.Length);
        double[] missed = new double[measured.Length];
        int count = 0;
        double sum = 0, squares = 0, sizes = 0;
        for (int i = 0; i < missed.Length; i++)
        {
            double miss = missed[i] = measured[i] - modelled[i];
            if (!double.IsNaN(miss))
            {
                count++;
                sum += miss;
                squares += miss * miss;
                sizes += Math.Abs(miss);
            }
        }

        double bias = sum / count; // NaN without steps
        double worth = Statistics.EffectiveCount.Of(missed);
        double variance = Math.Max(0, (squares / count) - (bias * bias));
        double reach = worth < 2 ? double.NaN : StudentT.InvCDF(0, 1, worth - 1, 0.95) * Math.Sqrt(variance / (worth - 1));
        return new(count, worth, new(bias, bias - reach, bias + reach), Math.Sqrt(squares / count), sizes / count);
    }
}
