using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Balance;

namespace ClimateLens.Analysis.Gridding;

/// <summary>
/// A house period in the steps of the house balance, about a quarter of an hour, for what is worked through hundreds of times: each value is the mean of those that are used.
/// What the checks said of single steps is left behind.
/// </summary>
internal static class CoarserPeriod
{
    /// <summary>The period in longer steps, without the weather of its leaves; as it is where its steps are long already or do not join to parts of an hour.</summary>
    public static HousePeriod Of(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        int times = BalanceFit.JoinedSteps(axis.Step.TotalHours);
        if (times == 1 || period.StepsPerHour % times != 0)
        {
            return period with { Foliage = null };
        }

        int count = (axis.Count + times - 1) / times;
        Frame frame = new(axis with { Step = axis.Step * times, Count = count });
        foreach (ColumnKey key in period.Frame.Columns)
        {
            double[] means = Means(Quality.Used(period.Frame, key), times, count);
            frame = frame.With(key, [.. means], [.. means.Select(v => double.IsNaN(v) ? QualityFlag.Missing : QualityFlag.Pass)]);
        }

        return period with
        {
            Frame = frame,
            FirstStep = period.FirstStep / times,
            RowSeen = [],
            OverGap = ImmutableDictionary<ColumnKey, bool[]>.Empty,
            Checks = ImmutableDictionary<ColumnKey, SeriesFlags>.Empty,
            Foliage = null,
        };
    }

    private static double[] Means(double[] values, int times, int count)
    {
        double[] means = new double[count];
        for (int i = 0; i < count; i++)
        {
            double sum = 0;
            int known = 0;
            for (int k = i * times; k < Math.Min(values.Length, (i + 1) * times); k++)
            {
                (sum, known) = double.IsNaN(values[k]) ? (sum, known) : (sum + values[k], known + 1);
            }

            means[i] = sum / known;
        }

        return means;
    }
}
