namespace ClimateLens.Science.Statistics;

/// <summary>An input cut into bins of about equal counts.</summary>
/// <param name="Bin">Bin of each row, from 0 on.</param>
/// <param name="Edges">Upper edge of each bin but the last, halfway between two values that occur. [unit of the input]</param>
internal sealed record BinnedInputs(byte[] Bin, double[] Edges)
{
    /// <summary>Cuts the values of an input.</summary>
    /// <param name="values">A value for each row. [any unit]</param>
    /// <param name="bins">Bins at most, 2 to 256.</param>
    public static BinnedInputs Of(double[] values, int bins)
    {
        double[] sorted = [.. values];
        Array.Sort(sorted);
        int different = 1;
        for (int i = 1; i < sorted.Length; i++)
        {
            different += sorted[i] > sorted[i - 1] ? 1 : 0;
        }

        double fill = different <= bins ? 1 : (double)sorted.Length / bins; // as many values as a bin should hold
        List<double> edges = [];
        for (int i = 1; i < sorted.Length && edges.Count < bins - 1; i++)
        {
            if (sorted[i] > sorted[i - 1] && (different <= bins || i >= fill * (edges.Count + 1)))
            {
                edges.Add(sorted[i - 1] + ((sorted[i] - sorted[i - 1]) / 2));
            }
        }

        double[] upper = [.. edges];
        return new BinnedInputs(Array.ConvertAll(values, value => BinOf(value, upper)), upper);
    }

    private static byte BinOf(double value, double[] upper)
    {
        int at = Array.BinarySearch(upper, value);
        return (byte)(at < 0 ? ~at : at);
    }
}
