using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>All tests of one series. Limits come from the channel (<see cref="ChannelCatalogue"/>).</summary>
public static class SeriesChecks
{
    /// <summary>
    /// Humidity at or above this is condensing air or a saturated sensor. It may rightly stay there all night, so standing
    /// still does not fail it. Common practice, no source. [%]
    /// </summary>
    public const double SaturatedPct = 99.5;

    /// <summary>A day: the window of the attenuated-signal test. [h]</summary>
    public const int AttenuatedHours = 24;

    /// <summary>Flags a series by the tests that need nothing but itself.</summary>
    /// <param name="values">Values on the grid. [SI unit of the channel]</param>
    /// <param name="channel">Channel.</param>
    /// <param name="step">Grid step.</param>
    /// <param name="apart">Values of another unit, which the tests of movement leave out; empty: none.</param>
    public static SeriesFlags Flags(ReadOnlySpan<double> values, Channel channel, Duration step, ReadOnlySpan<bool> apart = default)
    {
        QualityFlag[] range = new QualityFlag[values.Length];
        GrossRange.Test(values, channel.FailLow, channel.FailHigh, channel.SuspectLow, channel.SuspectHigh, range);
        SeriesFlags flags = new SeriesFlags(values).With(QualityCheck.GrossRange, range);
        double[] believable = WithoutFailed(values, range);
        for (int i = 0; i < apart.Length; i++)
        {
            believable[i] = apart[i] ? double.NaN : believable[i];
        }

        if (double.IsFinite(channel.SpikeLimit))
        {
            flags = flags.With(QualityCheck.Spike, Spikes(believable, SpikeLimit(channel, step)));
        }

        if (double.IsFinite(channel.StepLimit))
        {
            flags = flags.With(QualityCheck.RateOfChange, Rates(WithoutLoneSpikes(believable, flags), StepLimit(channel, step), step));
        }

        if (double.IsFinite(channel.FlatHours))
        {
            flags = flags.With(QualityCheck.FlatLine, Flats(believable, channel, step));
        }

        return double.IsFinite(channel.LeastDailyRange) ? flags.With(QualityCheck.AttenuatedSignal, Attenuated(believable, channel, step)) : flags;
    }

    /// <summary>
    /// Spike limit at a grid step. The catalogue's limit is for five minutes; over longer steps honest values differ more,
    /// as the square root of time (a random walk); over shorter ones the limit stays, since a fast sensor near a vent or
    /// a boom jumps as far in one minute as in five. Common practice, no source. [SI unit of the channel]
    /// </summary>
    public static double SpikeLimit(Channel channel, Duration step) => channel.SpikeLimit * Longer(step);

    /// <summary>Limit of the rate-of-change test at a grid step, as a change from one step to the next; it grows as the spike limit does. [SI unit of the channel]</summary>
    public static double StepLimit(Channel channel, Duration step) => channel.StepLimit * Longer(step);

    private static double Longer(Duration step) => Math.Sqrt(Math.Max(1, step.TotalMinutes / 5));

    private static QualityFlag[] Rates(double[] values, double limit, Duration step)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        RateOfChange.Test(values, step.TotalSeconds, limit / step.TotalSeconds, double.PositiveInfinity, flags);
        return flags;
    }

    private static QualityFlag[] Attenuated(double[] values, Channel channel, Duration step)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        AttenuatedSignal.Trailing(values, Math.Max(1, (int)(Duration.FromHours(AttenuatedHours) / step)), channel.LeastDailyRange, flags);
        return flags;
    }

    /// <summary>A lone spike is named as such; the step back from it is no step of its own.</summary>
    private static double[] WithoutLoneSpikes(double[] values, SeriesFlags flags)
    {
        double[] others = [.. values];
        bool Spiky(int i) => i >= 0 && i < others.Length && flags.Found(QualityCheck.Spike, i);
        for (int i = 0; i < others.Length; i++)
        {
            others[i] = Spiky(i) && !Spiky(i - 1) && !Spiky(i + 1) ? double.NaN : others[i];
        }

        return others;
    }

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
