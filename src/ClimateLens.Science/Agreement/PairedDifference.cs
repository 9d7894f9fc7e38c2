using ClimateLens.Science.Statistics;
using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Agreement;

/// <summary>First minus second over pairs of numbers: two graders, two sensors, two weighings.</summary>
/// <param name="Count">Pairs of which both are known.</param>
/// <param name="Bias">Mean difference with its 5 to 95 % range; no range below two pairs. [unit of the pairs]</param>
/// <param name="Deviation">Standard deviation of the differences; NaN below two pairs. [unit of the pairs]</param>
/// <remarks>
/// <para><b>Formula:</b> mean d and standard deviation s (n - 1) of the differences; range <c>d ± t s/√n</c>; limits of agreement <c>d ± 1.96 s</c>, whose standard error is about <c>√(3/n) s</c>.</para>
/// <para><b>Source:</b> [BA86], re-stated by public tests. <b>Error:</b> the pairs are taken as independent; limits of agreement are for continuous readings, not for five levels.</para>
/// </remarks>
public readonly record struct PairedDifference(int Count, Interval Bias, double Deviation)
{
    private static readonly double Normal95 = Normal.InvCDF(0, 1, 0.975);

    /// <summary>Lower limit of agreement. [unit of the pairs]</summary>
    public double LowerLimit => Bias.Value - (Normal95 * Deviation);

    /// <summary>Upper limit of agreement. [unit of the pairs]</summary>
    public double UpperLimit => Bias.Value + (Normal95 * Deviation);

    /// <summary>Approximate standard error of a limit. [unit of the pairs]</summary>
    public double LimitError => Math.Sqrt(3.0 / Count) * Deviation;

    /// <summary>Compares two columns.</summary>
    /// <param name="first">One column; NaN for not known.</param>
    /// <param name="second">The other.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    public static PairedDifference Of(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        Guard.SameLength(first.Length, second.Length);
        List<double> differences = [];
        for (int i = 0; i < first.Length; i++)
        {
            if (double.IsFinite(first[i] - second[i]))
            {
                differences.Add(first[i] - second[i]);
            }
        }

        int count = differences.Count;
        if (count == 0)
        {
            return new(0, Interval.Unknown, double.NaN);
        }

        double mean = differences.Average();
        if (count == 1)
        {
            return new(1, new(mean, double.NaN, double.NaN), double.NaN);
        }

        double deviation = Math.Sqrt(differences.Sum(d => (d - mean) * (d - mean)) / (count - 1));
        double reach = StudentT.InvCDF(0, 1, count - 1, 0.95) * deviation / Math.Sqrt(count);
        return new(count, new(mean, mean - reach, mean + reach), deviation);
    }
}
