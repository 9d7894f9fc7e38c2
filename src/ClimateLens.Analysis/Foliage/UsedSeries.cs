using ClimateLens.Analysis.Stages;

namespace ClimateLens.Analysis.Foliage;

/// <summary>Columns of a channel as the science takes them: the first series that has a value which passed its checks.</summary>
internal static class UsedSeries
{
    /// <summary>The channel's values step by step, NaN where none is used; null where the house has no such series at all.</summary>
    /// <param name="period">The house period, checked.</param>
    /// <param name="channel">Channel name.</param>
    public static double[]? Of(HousePeriod period, string channel)
    {
        double[]? values = null;
        foreach (Series series in period.Series.Where(s => s.Channel.Name == channel))
        {
            double[] used = Quality.Used(period.Frame, series.Key);
            if (values is null)
            {
                values = used;
                continue;
            }

            for (int i = 0; i < values.Length; i++)
            {
                values[i] = double.IsNaN(values[i]) ? used[i] : values[i];
            }
        }

        return values is not null && values.Any(double.IsFinite) ? values : null;
    }

    /// <summary>Steps of the period itself in which a column has a value.</summary>
    public static int Known(HousePeriod period, ReadOnlySpan<double> values)
    {
        int known = 0;
        for (int i = period.FirstStep; i < values.Length; i++)
        {
            known += double.IsFinite(values[i]) ? 1 : 0;
        }

        return known;
    }
}
