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

    /// <summary>The middle value of each hour over several days.</summary>
    public static double[] Middle(IReadOnlyList<DayProfile> days)
    {
        double[] hours = new double[24];
        for (int hour = 0; hour < 24; hour++)
        {
            hours[hour] = Median([.. days.Select(d => d.Hours[hour]).Where(double.IsFinite)]);
        }

        return hours;
    }

    /// <summary>The middle value, the mean of two; NaN for none. Sorts what it is given.</summary>
    public static double Median(double[] values)
    {
        Array.Sort(values);
        return values.Length == 0 ? double.NaN : (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }

    /// <summary>Hour of the day of a moment.</summary>
    public static int HourOf(long utcMicros) => (int)(Floor(utcMicros, HourMicros) - (Floor(utcMicros, DayMicros) * 24));

    private static double MiddleOf(ReadOnlySpan<double> values)
        => Median([.. ((double[])[values[0], values[values.Length / 2], values[^1]]).Where(double.IsFinite)]);

    private static long Floor(long value, long by) => value >= 0 ? value / by : ((value + 1) / by) - 1;
}
