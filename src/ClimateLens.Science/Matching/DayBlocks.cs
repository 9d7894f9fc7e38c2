using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Matching;

/// <summary>
/// Range of a comparison: days are drawn in blocks, and events and the stretches they are compared with come along with their days. So a day that serves many events
/// is not taken for many days.
/// </summary>
internal sealed class DayBlocks(int steps, MatchDesign design)
{
    private readonly int _dayLength = Math.Max(1, design.Steps(24));

    private int Days => ((steps - 1) / _dayLength) + 1;

    /// <summary>Mean over the events of their rise less that of their stretches, at each point, and its range.</summary>
    /// <param name="events">Events that were matched.</param>
    /// <param name="points">Number of points.</param>
    /// <param name="rise">Rise of the stretch with that start at that point; NaN for not known.</param>
    /// <param name="draws">Number of draws.</param>
    /// <param name="random">Source of the draws.</param>
    public Interval[] Ranges(IReadOnlyList<MatchedEvent> events, int points, Func<int, int, double> rise, int draws, SeededRandom random)
    {
        double[][][] rises = [.. events.Select(e => Rises(e, points, rise))];
        int[][] days = [.. events.Select(e => (int[])[e.Start / _dayLength, .. e.Stretches.Select(s => s / _dayLength)])];
        int[] times = new int[Days];
        Array.Fill(times, 1);
        double[] values = new double[points];
        Means(rises, days, times, values);
        if (events.Count < MovingBlockBootstrap.FewestValues)
        {
            return Array.ConvertAll(values, value => new Interval(value, double.NaN, double.NaN));
        }

        double[][] drawn = [.. Enumerable.Range(0, points).Select(_ => new double[draws])];
        double[] means = new double[points];
        for (int draw = 0; draw < draws; draw++)
        {
            MovingBlockBootstrap.Times(MovingBlockBootstrap.BlockLength(Days), random, times);
            Means(rises, days, times, means);
            for (int point = 0; point < points; point++)
            {
                drawn[point][draw] = means[point];
            }
        }

        return [.. values.Select((value, point) => Interval.OfDraws(value, Array.FindAll(drawn[point], double.IsFinite)))];
    }

    private static double[][] Rises(MatchedEvent matched, int points, Func<int, int, double> rise) =>
        [.. matched.Stretches.Prepend(matched.Start).Select(start => Enumerable.Range(0, points).Select(point => rise(start, point)).ToArray())];

    /// <summary>An event counts as often as its day was drawn, and so does each stretch; without any stretch drawn it does not count.</summary>
    private static void Means(double[][][] rises, int[][] days, int[] times, double[] means)
    {
        for (int point = 0; point < means.Length; point++)
        {
            double sum = 0;
            int weight = 0;
            for (int e = 0; e < rises.Length; e++)
            {
                int often = times[days[e][0]];
                double effect = often == 0 ? double.NaN : rises[e][0][point] - Like(rises[e], days[e], times, point);
                (sum, weight) = double.IsNaN(effect) ? (sum, weight) : (sum + (often * effect), weight + often);
            }

            means[point] = sum / weight;
        }
    }

    private static double Like(double[][] rises, int[] days, int[] times, int point)
    {
        double sum = 0;
        int weight = 0;
        for (int i = 1; i < rises.Length; i++)
        {
            double rise = rises[i][point];
            int often = double.IsNaN(rise) ? 0 : times[days[i]];
            (sum, weight) = often == 0 ? (sum, weight) : (sum + (often * rise), weight + often);
        }

        return sum / weight;
    }
}
