using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Zeros that no sensor reads. An instrument without power or connection writes zeros for everything; air never has a temperature and a
/// humidity of exactly 0. A zero alone is a reading as long as the values beside it lead there: 0 °C outside, in frost, is true.
/// Common practice, no source.
/// </summary>
internal static class Zeros
{
    /// <summary>Logged VPD or humidity deficit of exactly 0 is true in saturated air only. [%]</summary>
    private const double NearlySaturatedPct = 97;

    /// <summary>For each step, whether its 0 is none.</summary>
    public static bool[] Steps(HousePeriod period, Series series)
    {
        bool[] zeros = WithoutPower(period, series);
        double[] values = [.. period.Frame.Values(series.Key)];
        bool[] alone = OutOfNowhere(Without(zeros, values), series.Channel, period.Frame.Axis.Step);
        bool[] contradicted = Contradicted(period, series);
        for (int i = 0; i < zeros.Length; i++)
        {
            zeros[i] |= alone[i] || contradicted[i];
        }

        return zeros;
    }

    /// <summary>Steps in which a value is exactly 0 while temperature and humidity of its export are.</summary>
    public static bool[] WithoutPower(HousePeriod period, Series series)
    {
        bool[] zeros = new bool[period.Frame.Axis.Count];
        if (series.Channel.Gridding == Nursery.Channels.Gridding.Smooth
            && Beside(period, series, "airTemperature", period.Temperature) is Series temperature
            && Beside(period, series, "relativeHumidity", period.Humidity) is Series humidity)
        {
            ImmutableArray<double> own = period.Frame.Values(series.Key), t = period.Frame.Values(temperature.Key), rh = period.Frame.Values(humidity.Key);
            for (int i = 0; i < zeros.Length; i++)
            {
                zeros[i] = own[i] == 0 && t[i] == 0 && rh[i] == 0;
            }
        }

        return zeros;
    }

    /// <summary>
    /// Stretches of exactly 0 to which no value leads: the values before and after, as far as there are any within an hour, lie further
    /// away than the channel's limit. A series that is never anything else but 0 for a day is no reading either.
    /// </summary>
    public static bool[] OutOfNowhere(double[] values, Channel channel, Duration step)
    {
        bool[] zeros = new bool[values.Length];
        double limit = channel.ZeroLimit * Math.Sqrt(Math.Max(1, step.TotalMinutes / 5));
        int hour = Math.Max(1, (int)(Duration.FromHours(1) / step));
        bool never = values.Count(v => v == 0) >= 24 * hour && values.All(v => v == 0 || double.IsNaN(v));
        for (int first = 0; double.IsFinite(limit) && first < values.Length; first++)
        {
            int end = first;
            while (end < values.Length && values[end] == 0)
            {
                end++;
            }

            if (end > first)
            {
                double before = Nearest(values, first - 1, -1, hour), after = Nearest(values, end, 1, hour);
                bool known = double.IsFinite(before) || double.IsFinite(after);
                bool near = Math.Abs(before) <= limit || Math.Abs(after) <= limit;
                Array.Fill(zeros, limit == 0 || never || (known && !near), first, end - first);
                first = end;
            }
        }

        return zeros;
    }

    /// <summary>The values with those steps left out, so that the zeros do not make spikes of the values beside them.</summary>
    public static double[] Without(bool[] zeros, ReadOnlySpan<double> values)
    {
        double[] others = values.ToArray();
        for (int i = 0; i < zeros.Length; i++)
        {
            others[i] = zeros[i] ? double.NaN : others[i];
        }

        return others;
    }

    /// <summary>The check's flags: fail at those steps, nothing elsewhere.</summary>
    public static QualityFlag[] Flags(bool[] zeros)
        => [.. zeros.Select(zero => zero ? QualityFlag.Fail : QualityFlag.Missing)];

    private static bool[] Contradicted(HousePeriod period, Series series)
    {
        bool[] zeros = new bool[period.Frame.Axis.Count];
        if (series.Channel.Name is "vapourPressureDeficit" or "humidityDeficit" && Beside(period, series, "relativeHumidity", null) is Series humidity)
        {
            ImmutableArray<double> own = period.Frame.Values(series.Key), rh = period.Frame.Values(humidity.Key);
            for (int i = 0; i < zeros.Length; i++)
            {
                zeros[i] = own[i] == 0 && rh[i] is > 0 and < NearlySaturatedPct;
            }
        }

        return zeros;
    }

    /// <summary>The series of a channel that stands beside another: of its export and sensor name, of its export, or the main one when the series is behind a main one itself.</summary>
    private static Series? Beside(HousePeriod period, Series series, string channel, Series? main)
    {
        IEnumerable<Series> own = period.Series.Where(s => s.Channel.Name == channel && s.House == series.House && s.Source == series.Source);
        bool isMain = JoinedSources.IsBehind(series, period.Temperature) || JoinedSources.IsBehind(series, period.Humidity);
        return own.FirstOrDefault(s => s.Sensor == series.Sensor) ?? own.FirstOrDefault() ?? (isMain ? main : null);
    }

    private static double Nearest(double[] values, int from, int direction, int steps)
    {
        for (int i = from, n = 0; i >= 0 && i < values.Length && n < steps; i += direction, n++)
        {
            if (double.IsFinite(values[i]))
            {
                return values[i];
            }
        }

        return double.NaN;
    }
}
