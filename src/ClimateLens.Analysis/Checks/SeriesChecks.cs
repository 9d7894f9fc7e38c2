using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>Flags of one series: rolled up, and of the tests of movement apart, so that notes can name what was found.</summary>
/// <param name="RolledUp">One flag a value.</param>
/// <param name="Spike">Flags of the spike test; empty when the channel has none.</param>
/// <param name="Flat">Flags of the flat-line test; empty when the channel has none.</param>
public sealed record SeriesFlags(QualityFlag[] RolledUp, QualityFlag[] Spike, QualityFlag[] Flat);

/// <summary>All tests of one series. Limits come from the channel (<see cref="ChannelCatalogue"/>).</summary>
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
    public static SeriesFlags Flags(ReadOnlySpan<double> values, Channel channel, Duration step)
    {
        QualityFlag[] rolled = new QualityFlag[values.Length];
        GrossRange.Test(values, channel.FailLow, channel.FailHigh, channel.SuspectLow, channel.SuspectHigh, rolled);
        double[] believable = WithoutFailed(values, rolled);
        QualityFlag[] spike = double.IsFinite(channel.SpikeLimit) ? Spikes(believable, SpikeLimit(channel, step)) : [];
        QualityFlag[] flat = double.IsFinite(channel.FlatHours) ? Flats(believable, channel, step) : [];
        FlagRollUp.Into(rolled, spike);
        FlagRollUp.Into(rolled, flat);
        return new SeriesFlags(rolled, spike, flat);
    }

    /// <summary>
    /// Spike limit at a grid step. The catalogue's limit is for five minutes; over longer steps honest values differ more,
    /// as the square root of time (a random walk); over shorter ones the limit stays, since a fast sensor near a vent or
    /// a boom jumps as far in one minute as in five. Common practice, no source. [SI unit of the channel]
    /// </summary>
    public static double SpikeLimit(Channel channel, Duration step)
        => channel.SpikeLimit * Math.Sqrt(Math.Max(1, step.TotalMinutes / 5));

    private static QualityFlag[] Spikes(double[] values, double limit)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        Spike.Test(values, limit, 2 * limit, flags);
        Spike.SpareNeighbours(values, flags);
        return flags;
    }

    private static QualityFlag[] Flats(double[] values, Channel channel, Duration step)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        int suspectSteps = Math.Max(1, (int)(Duration.FromHours(channel.FlatHours) / step));
        FlatLine.Test(values, suspectSteps, 2 * suspectSteps, channel.FlatTolerance, flags);
        FlatLine.CarryBack(flags, suspectSteps, 2 * suspectSteps);
        for (int i = 0; channel.Quantity == Quantity.RelativeHumidity && i < flags.Length; i++)
        {
            flags[i] = flags[i] == QualityFlag.Fail && values[i] >= SaturatedPct ? QualityFlag.Suspect : flags[i];
        }

        return flags;
    }

    /// <summary>An impossible value is failed already; it must not cost the values beside it their flags.</summary>
    private static double[] WithoutFailed(ReadOnlySpan<double> values, QualityFlag[] flags)
    {
        double[] believable = values.ToArray();
        for (int i = 0; i < flags.Length; i++)
        {
            believable[i] = flags[i] == QualityFlag.Fail ? double.NaN : believable[i];
        }

        return believable;
    }
}
