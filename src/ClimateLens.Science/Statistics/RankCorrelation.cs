using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Statistics;

/// <summary>How far two columns rise and fall together, by their ranks.</summary>
/// <param name="Rho">Spearman's coefficient, -1 to 1; its range is NaN below four pairs. [1]</param>
/// <param name="ChanceShare">Share of random pairings of the same values that lie at least as far from 0. [1]</param>
/// <param name="Pairs">Pairs of which both values are known.</param>
/// <remarks>
/// <para><b>Formula:</b> Pearson's coefficient of the ranks, equal values sharing their mean rank; range
/// <c>tanh(atanh ρ ± z √((1 + ρ²/2)/(n - 3)))</c>; chance by random pairing, <c>(1 + hits)/(1 + pairings)</c>.</para>
/// <para><b>Source:</b> [SPEARMAN04] (memory); range [BW00] (re-statement and worked example); chance [PS10] (memory).</para>
/// <para><b>Range and error:</b> the range is good from 25 pairs on and for |ρ| below 0.9; with fewer, or with values that follow from the ones
/// before (weeks of one crop do), it is too narrow. A correlation is no proof of a cause, and a lack of one over few weeks no proof of none.</para>
/// </remarks>
public readonly record struct RankCorrelation(Interval Rho, double ChanceShare, int Pairs)
{
    /// <summary>Random pairings tried.</summary>
    public const int Pairings = 9999;

    /// <summary>Rank correlation of two columns.</summary>
    /// <param name="first">One column; NaN for not known.</param>
    /// <param name="second">The other.</param>
    /// <param name="level">Confidence of the range, 0.5 to 0.999; 0.9 leaves 5 % at either side. [1]</param>
    /// <param name="seed">Seed of the random pairings.</param>
    /// <exception cref="ArgumentException">Columns differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is impossible.</exception>
    /// <remarks>NaN where fewer than three pairs are known or a column does not vary.</remarks>
    public static RankCorrelation Of(ReadOnlySpan<double> first, ReadOnlySpan<double> second, double level, ulong seed)
    {
        Guard.SameLength(first.Length, second.Length);
        double confidence = Guard.Within(Guard.Finite(level), 0.5, 0.999, "(share)");
        (double[] a, double[] b) = Known(first, second);
        if (a.Length < 3)
        {
            return new(Interval.Unknown, double.NaN, a.Length);
        }

        double[] x = Centred(Ranks.Of(a)), y = Centred(Ranks.Of(b));
        double scale = Math.Sqrt(Product(x, x) * Product(y, y));
        if (scale == 0)
        {
            return new(Interval.Unknown, double.NaN, a.Length);
        }

        double rho = Math.Clamp(Product(x, y) / scale, -1, 1);
        return new(Range(rho, a.Length, confidence), Chance(x, y, Math.Abs(Product(x, y)), seed), a.Length);
    }

    private static Interval Range(double rho, int pairs, double level)
    {
        if (pairs < 4)
        {
            return new(rho, double.NaN, double.NaN);
        }

        double reach = Normal.InvCDF(0, 1, (1 + level) / 2) * Math.Sqrt((1 + (rho * rho / 2)) / (pairs - 3));
        double middle = Math.Atanh(rho); // infinite at ±1: the range is then ±1 itself
        return new(rho, Math.Tanh(middle - reach), Math.Tanh(middle + reach));
    }

    private static double Chance(double[] x, double[] y, double observed, ulong seed)
    {
        var random = new SeededRandom(seed);
        double[] mixed = [.. y];
        double atLeast = observed * (1 - 1e-12); // the same pairing summed in another order
        int hits = 0;
        for (int pairing = 0; pairing < Pairings; pairing++)
        {
            for (int i = mixed.Length - 1; i > 0; i--)
            {
                int other = (int)(random.NextDouble() * (i + 1));
                (mixed[i], mixed[other]) = (mixed[other], mixed[i]);
            }

            hits += Math.Abs(Product(x, mixed)) >= atLeast ? 1 : 0;
        }

        return (1.0 + hits) / (1 + Pairings);
    }

    private static (double[] First, double[] Second) Known(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        List<double> a = [], b = [];
        for (int i = 0; i < first.Length; i++)
        {
            if (!double.IsNaN(first[i] + second[i]))
            {
                a.Add(first[i]);
                b.Add(second[i]);
            }
        }

        return ([.. a], [.. b]);
    }

    private static double[] Centred(double[] ranks)
    {
        double mean = (ranks.Length + 1) / 2.0;
        return Array.ConvertAll(ranks, rank => rank - mean);
    }

    private static double Product(double[] x, double[] y)
    {
        double sum = 0;
        for (int i = 0; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }
}
