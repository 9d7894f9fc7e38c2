using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Temperature and humidity both exactly 0 at one moment: an instrument without power or connection writes zeros; air never
/// does. Both fail. Common practice, no source.
/// </summary>
internal static class BothZero
{
    /// <summary>For each step, whether one of the two and its counterpart, of the same export where it has one, are both exactly 0.</summary>
    public static bool[] Steps(HousePeriod period, Series series)
    {
        bool[] zeros = new bool[period.Frame.Axis.Count];
        if (Counterpart(period, series) is Series other)
        {
            ImmutableArray<double> own = period.Frame.Values(series.Key);
            ImmutableArray<double> others = period.Frame.Values(other.Key);
            for (int i = 0; i < zeros.Length; i++)
            {
                zeros[i] = own[i] == 0 && others[i] == 0;
            }
        }

        return zeros;
    }

    /// <summary>Whether a series is one of the two.</summary>
    public static bool Concerns(HousePeriod period, Series series)
        => JoinedSources.IsBehind(series, period.Temperature) || JoinedSources.IsBehind(series, period.Humidity);

    private static Series? Counterpart(HousePeriod period, Series series)
    {
        Series? main = JoinedSources.IsBehind(series, period.Temperature) ? period.Humidity
            : JoinedSources.IsBehind(series, period.Humidity) ? period.Temperature
            : null;
        return period.Series.FirstOrDefault(s => JoinedSources.IsBehind(s, main) && s.House == series.House && s.Source == series.Source) ?? main;
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

    /// <summary>Fails the steps.</summary>
    public static void Fail(bool[] zeros, Span<QualityFlag> flags)
    {
        for (int i = 0; i < zeros.Length; i++)
        {
            flags[i] = zeros[i] ? QualityFlag.Fail : flags[i];
        }
    }
}
