namespace ClimateLens.Science.Agreement;

/// <summary>How often two people gave each pair of levels to the same things. The levels are fixed beforehand, whether or not each was used.</summary>
public sealed class AgreementTable
{
    private readonly double[] _counts;

    private AgreementTable(int levels, double[] counts) => (Levels, _counts) = (levels, counts);

    /// <summary>Number of levels.</summary>
    public int Levels { get; }

    /// <summary>Sum of all counts; for counts of pairs their number.</summary>
    public double Total => _counts.Sum();

    /// <summary>Count of things to which the first gave level <paramref name="first"/> and the second level <paramref name="second"/>, both from 0.</summary>
    public double this[int first, int second] => _counts[(first * Levels) + second];

    /// <summary>A table of counts or shares, row by row: the first person's level is the row.</summary>
    /// <param name="levels">Number of levels, 2 to 50.</param>
    /// <param name="counts">Counts, finite and not negative, <paramref name="levels"/> squared of them.</param>
    /// <exception cref="ArgumentException">The number of counts is not the square of the levels.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count or the number of levels is impossible.</exception>
    public static AgreementTable Of(int levels, params ReadOnlySpan<double> counts)
    {
        Guard.Within(levels, 2, 50, "levels");
        Guard.SameLength(levels * levels, counts.Length);
        foreach (double count in counts)
        {
            Guard.Within(Guard.Finite(count), 0, double.MaxValue, "counts");
        }

        return new(levels, counts.ToArray());
    }

    /// <summary>The table of pairs of level numbers.</summary>
    /// <param name="levels">Number of levels, 2 to 50.</param>
    /// <param name="pairs">Both levels of each thing, from 0 to <paramref name="levels"/> less one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A level is none of the fixed ones.</exception>
    public static AgreementTable OfPairs(int levels, IEnumerable<(int First, int Second)> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        double[] counts = new double[(int)Guard.Within(levels, 2, 50, "levels") * levels];
        foreach ((int first, int second) in pairs)
        {
            Guard.Within(first, 0, levels - 1, "(level)");
            Guard.Within(second, 0, levels - 1, "(level)");
            counts[(first * levels) + second]++;
        }

        return new(levels, counts);
    }

    /// <summary>Share of all in a row, the first person's margin. [1]</summary>
    internal double[] FirstMargin() => Margin((first, _) => first);

    /// <summary>Share of all in a column, the second person's margin. [1]</summary>
    internal double[] SecondMargin() => Margin((_, second) => second);

    private double[] Margin(Func<int, int, int> place)
    {
        double total = Total;
        double[] shares = new double[Levels];
        for (int i = 0; i < _counts.Length; i++)
        {
            shares[place(i / Levels, i % Levels)] += _counts[i] / total;
        }

        return shares;
    }
}
