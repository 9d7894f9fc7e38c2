using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>
/// Temperature and humidity both exactly 0 at one moment: an instrument without power or connection writes zeros; air never
/// does. Both fail. Common practice, no source.
/// </summary>
internal static class BothZero
{
    /// <summary>For each step, whether the main temperature and the main humidity are both exactly 0.</summary>
    public static bool[] Steps(HousePeriod period)
    {
        bool[] zeros = new bool[period.Frame.Axis.Count];
        if (period.Temperature is Series temperature && period.Humidity is Series humidity)
        {
            ImmutableArray<double> t = period.Frame.Values(temperature.Key);
            ImmutableArray<double> rh = period.Frame.Values(humidity.Key);
            for (int i = 0; i < zeros.Length; i++)
            {
                zeros[i] = t[i] == 0 && rh[i] == 0;
            }
        }

        return zeros;
    }

    /// <summary>Whether a series is one of the two.</summary>
    public static bool Concerns(HousePeriod period, Series series)
        => series.Key == period.Temperature?.Key || series.Key == period.Humidity?.Key;

    /// <summary>Fails the steps.</summary>
    public static void Fail(bool[] zeros, Span<QualityFlag> flags)
    {
        for (int i = 0; i < zeros.Length; i++)
        {
            flags[i] = zeros[i] ? QualityFlag.Fail : flags[i];
        }
    }
}
