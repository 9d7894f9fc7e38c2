namespace ClimateLens.Nursery.Channels.Changes;

/// <summary>One day of a series by the hour: what a change of unit is told from, since it moves every hour alike.</summary>
/// <param name="Day">Day, counted from 1970-01-01 UTC.</param>
/// <param name="First">Index of its first reading.</param>
/// <param name="End">Index behind its last reading.</param>
/// <param name="Hours">Each hour's value; NaN without one.</param>
internal sealed record DayProfile(long Day, int First, int End, double[] Hours)
{
    private const long HourMicros = 3_600_000_000, DayMicros = 24 * HourMicros;
    private const int FewestHours = 6;

    /// <summary>
    /// The days that have values in at least a quarter of their hours, in order. An hour is the middle one of up to three of its
    /// values, so that a lone wild reading does not stand for it.
    /// </summary>
    public static List<DayProfile> Of(ReadOnlySpan<long> utcMicros, ReadOnlySpan<double> values)
    {
        List<DayProfile> days = [];
        for (int first = 0; first < utcMicros.Length;)
        {
            long day = Floor(utcMicros[first], DayMicros);
            int end = first;
            double[] hours = new double[24];
            Array.Fill(hours, double.NaN);
            while (end < utcMicros.Length && Floor(utcMicros[end], DayMicros) == day)
            {
                int from = end;
                long hour = Floor(utcMicros[from], HourMicros);
                while (end < utcMicros.Length && Floor(utcMicros[end], HourMicros) == hour)
                {
                    end++;
                }

                hours[hour - (day * 24)] = MiddleOf(values[from..end]);
            }

            if (hours.Count(double.IsFinite) >= FewestHours)
            {
                days.Add(new DayProfile(day, first, end, hours));
            }

            first = end;
        }

        return days;
    }

    /// <summary>The middle value of each hour over a few days.</summary>
    public static double[] Middle(List<DayProfile> days)
    {
        double[] hours = new double[24];
        Span<double> values = stackalloc double[days.Count];
        for (int hour = 0; hour < 24; hour++)
        {
            for (int i = 0; i < days.Count; i++)
            {
                values[i] = days[i].Hours[hour];
            }

            hours[hour] = MedianOfFinite(values);
        }

        return hours;
    }

    /// <summary>The middle of a few values, the mean of two; NaN for none. Sorts what it is given.</summary>
    public static double Median(Span<double> values)
    {
        for (int i = 1; i < values.Length; i++)
        {
            double value = values[i];
            int at = i;
            for (; at > 0 && values[at - 1] > value; at--)
            {
                values[at] = values[at - 1];
            }

            values[at] = value;
        }

        return values.Length == 0 ? double.NaN : (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }

    /// <summary>The same without what is not finite.</summary>
    private static double MedianOfFinite(Span<double> values)
    {
        int count = 0;
        foreach (double value in values)
        {
            values[count] = value;
            count += double.IsFinite(value) ? 1 : 0;
        }

        return Median(values[..count]);
    }

    /// <summary>Hour of the day of a moment.</summary>
    public static int HourOf(long utcMicros) => (int)(Floor(utcMicros, HourMicros) - (Floor(utcMicros, DayMicros) * 24));

    private static double MiddleOf(ReadOnlySpan<double> values)
    {
        Span<double> three = [values[0], values[values.Length / 2], values[^1]];
        return MedianOfFinite(three);
    }

    private static long Floor(long value, long by) => value >= 0 ? value / by : ((value + 1) / by) - 1;
}
