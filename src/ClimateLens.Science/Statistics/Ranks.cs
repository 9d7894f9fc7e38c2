namespace ClimateLens.Science.Statistics;

/// <summary>Ranks of a sample.</summary>
internal static class Ranks
{
    /// <summary>Ranks from 1; equal values share the mean of their ranks.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        int[] order = new int[sorted.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(sorted, order);
        double[] ranks = new double[sorted.Length];
        for (int first = 0, next; first < sorted.Length; first = next)
        {
            next = first + 1;
            while (next < sorted.Length && sorted[next] == sorted[first])
            {
                next++;
            }

            for (int i = first; i < next; i++)
            {
                ranks[order[i]] = (first + 1 + next) / 2.0;
            }
        }

        return ranks;
    }
}
