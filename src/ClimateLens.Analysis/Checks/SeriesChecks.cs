using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>All tests of one series, rolled up. Limits come from the channel (<see cref="ChannelCatalogue"/>).</summary>
public static class SeriesChecks
{
    /// <summary>
    /// Humidity at or above this is condensing air or a saturated sensor. It may rightly stay there all night, so standing
    /// still does not fail it. Common practice, no source. [%]
    /// </summary>
    public const double SaturatedPct = 99.5;

    /// <summary>Flags a series.</summary>
    /// <param name="values">Values on the grid. [SI unit of the channel]</param>
    /// <param name="channel">Channel.</param>
    /// <param name="step">Grid step.</param>
    public static QualityFlag[] Flags(ReadOnlySpan<double> values, Channel channel, Duration step)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        GrossRange.Test(values, channel.FailLow, channel.FailHigh, channel.SuspectLow, channel.SuspectHigh, flags);
        QualityFlag[] test = new QualityFlag[values.Length];
        if (double.IsFinite(channel.SpikeLimit))
        {
            double limit = SpikeLimit(channel, step);
            Spike.Test(values, limit, 2 * limit, test);
            Spike.SpareNeighbours(values, test);
            FlagRollUp.Into(flags, test);
        }

        if (double.IsFinite(channel.FlatHours))
        {
            int suspectSteps = Math.Max(1, (int)(Duration.FromHours(channel.FlatHours) / step));
            FlatLine.Test(values, suspectSteps, 2 * suspectSteps, channel.FlatTolerance, test);
            FlatLine.CarryBack(test, suspectSteps, 2 * suspectSteps);
            SpareSaturated(values, channel, test);
            FlagRollUp.Into(flags, test);
        }

        return flags;
    }

    /// <summary>
    /// Spike limit at a grid step. The catalogue's limit is for five minutes; over longer steps honest values differ more,
    /// as the square root of time (a random walk); over shorter ones the limit stays, since a fast sensor near a vent or
    /// a boom jumps as far in one minute as in five. Common practice, no source. [SI unit of the channel]
    /// </summary>
    public static double SpikeLimit(Channel channel, Duration step)
        => channel.SpikeLimit * Math.Sqrt(Math.Max(1, step.TotalMinutes / 5));

    private static void SpareSaturated(ReadOnlySpan<double> values, Channel channel, Span<QualityFlag> flags)
    {
        for (int i = 0; channel.Quantity == Quantity.RelativeHumidity && i < flags.Length; i++)
        {
            if (flags[i] == QualityFlag.Fail && values[i] >= SaturatedPct)
            {
                flags[i] = QualityFlag.Suspect;
            }
        }
    }
}
