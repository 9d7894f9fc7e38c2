namespace ClimateLens.Science.Statistics;

/// <summary>How a mean of values that hang together in time could have come out: resampling in blocks.</summary>
/// <remarks>
/// <para><b>Formula:</b> a new series of the same length is strung together from blocks of l values that follow each other, drawn with replacement from all
/// n - l + 1 of them; the last is cut off where the series is full. Its mean is one draw.</para>
/// <para><b>Source:</b> [KUNSCH89], from memory. Where l divides n the draws have the mean of all block means and <c>l/n</c> times their variance, exactly.</para>
/// <para><b>Error:</b> values at the ends are in fewer blocks, so the mean of the draws is a little off the mean of the series (8.4 against 8.33 in the check series).
/// With fewer than about ten blocks (from memory) the range is too narrow.</para>
/// </remarks>
public static class MovingBlockBootstrap
{
    /// <summary>Fewest values that are given a range; of four there are only nine different draws. A choice of this project. [values]</summary>
    public const int FewestValues = 5;

    /// <summary>Length of a block that is neither too short to hold what hangs together nor too long to be drawn often. [values]</summary>
    /// <param name="count">Number of values, 1 or more.</param>
    /// <remarks><b>Formula:</b> <c>n^⅓</c>, rounded up. <b>Source:</b> rate of [KUNSCH89], factor 1 a rule of thumb (from memory): a choice, not an optimum.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There are no values.</exception>
    public static int BlockLength(int count)
    {
        Guard.Within(count, 1, int.MaxValue, "(values)");
        int length = (int)Math.Round(Math.Cbrt(count));
        return (long)length * length * length < count ? length + 1 : length; // in whole numbers: 27 values give 3 everywhere
    }

    /// <summary>Means of resampled series, in the unit of the series.</summary>
    /// <param name="series">Values in order of time, finite, at least one.</param>
    /// <param name="blockLength">Values in a block, 1 to all of them; 1 is the plain bootstrap.</param>
    /// <param name="random">Source of the draws.</param>
    /// <param name="means">Receives one mean a draw, in order of drawing.</param>
    /// <remarks>Allocates nothing for up to 512 values.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or the block length is impossible.</exception>
    public static void Means(ReadOnlySpan<double> series, int blockLength, SeededRandom random, Span<double> means)
    {
        Guard.Within(blockLength, 1, series.Length, "(values)");
        foreach (double value in series)
        {
            Guard.Finite(value, nameof(series));
        }

        Span<int> times = series.Length <= 512 ? stackalloc int[series.Length] : new int[series.Length];
        for (int draw = 0; draw < means.Length; draw++)
        {
            Times(blockLength, random, times);
            double sum = 0;
            for (int i = 0; i < series.Length; i++)
            {
                sum += times[i] * series[i];
            }

            means[draw] = sum / series.Length;
        }
    }

    /// <summary>How often each value of a series is in one resampled series: for what is more than a mean.</summary>
    /// <param name="blockLength">Values in a block, 1 to all of them.</param>
    /// <param name="random">Source of the draws.</param>
    /// <param name="times">Receives how often; their sum is the number of values.</param>
    /// <remarks>Allocates nothing.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The block length is impossible.</exception>
    public static void Times(int blockLength, SeededRandom random, Span<int> times)
    {
        Guard.Within(blockLength, 1, times.Length, "(values)");
        times.Clear();
        int starts = times.Length - blockLength + 1;
        for (int filled = 0; filled < times.Length; filled += blockLength)
        {
            int start = (int)(random.NextDouble() * starts);
            foreach (ref int often in times.Slice(start, Math.Min(blockLength, times.Length - filled)))
            {
                often++;
            }
        }
    }

    /// <summary>The mean of a series and its 5 to 95 % range.</summary>
    /// <param name="series">Values in order of time, finite; none gives nothing known, fewer than <see cref="FewestValues"/> no range.</param>
    /// <param name="draws">Number of draws, 20 or more; 2000 place the ends to about a fortieth of their distance (from memory).</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or there are too few draws.</exception>
    public static Interval MeanRange(ReadOnlySpan<double> series, int draws, ulong seed)
    {
        Guard.Within(draws, 20, int.MaxValue, "(draws)");
        if (series.IsEmpty)
        {
            return Interval.Unknown;
        }

        double sum = 0;
        foreach (double value in series)
        {
            sum += Guard.Finite(value, nameof(series));
        }

        double mean = sum / series.Length;
        if (series.Length < FewestValues)
        {
            return new(mean, double.NaN, double.NaN);
        }

        double[] means = new double[draws];
        Means(series, BlockLength(series.Length), new SeededRandom(seed), means);
        return Interval.OfDraws(mean, means);
    }
}
