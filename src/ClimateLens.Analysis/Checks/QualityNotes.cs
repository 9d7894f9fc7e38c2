using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>Says in plain sentences what the tests found in a series during the period (not its run-in).</summary>
internal static class QualityNotes
{
    public static IEnumerable<string> On(HousePeriod period, Series series, bool[] zeros)
    {
        TimeAxis axis = period.Frame.Axis;
        ReadOnlyMemory<double> values = period.Frame.Values(series.Key).AsMemory();
        ImmutableArray<QualityFlag> flags = period.Frame.Flags(series.Key);
        Channel channel = series.Channel;
        int out1 = 0, out2 = 0, saturated = 0, zero = 0;
        for (int i = period.FirstStep; i < axis.Count; i++)
        {
            double value = values.Span[i];
            out1 += value < channel.FailLow || value > channel.FailHigh ? 1 : 0;
            out2 += value < channel.SuspectLow || value > channel.SuspectHigh ? 1 : 0;
            saturated += IsSaturated(channel, value) && flags[i] == QualityFlag.Suspect && value <= channel.SuspectHigh ? 1 : 0;
            zero += zeros[i] && flags[i] == QualityFlag.Fail ? 1 : 0;
        }

        string unit = Units.Symbol(channel.Quantity);
        if (out1 > 0)
        {
            yield return $"{Say.Count(out1, "step")} outside the possible range of {Say.Number(channel.FailLow)} to {Say.Number(channel.FailHigh)}{unit}: not used.";
        }

        if (out2 > out1)
        {
            yield return $"{Say.Count(out2 - out1, "step")} outside the usual range of {Say.Number(channel.SuspectLow)} to {Say.Number(channel.SuspectHigh)}{unit}: used, and counted as doubtful.";
        }

        if (saturated > 0)
        {
            yield return $"{Say.Hours(axis.Step * saturated)} at or above {Say.Number(SeriesChecks.SaturatedPct)} % without moving: condensing air or a saturated sensor, the data cannot tell; used, and counted as doubtful.";
        }

        if (zero > 0 && BothZero.Concerns(period, series))
        {
            yield return $"{Say.Count(zero, "step")} with temperature and humidity both exactly 0, as from an instrument without power: not used.";
        }

        foreach (string note in Movement(period, series, values.Span[period.FirstStep..].ToArray()))
        {
            yield return note;
        }
    }

    /// <summary>Spikes and flat lines, found again over the period alone so that each is named for what it is.</summary>
    private static IEnumerable<string> Movement(HousePeriod period, Series series, double[] values)
    {
        Channel channel = series.Channel;
        Duration step = period.Frame.Axis.Step;
        QualityFlag[] test = new QualityFlag[values.Length];
        if (double.IsFinite(channel.SpikeLimit))
        {
            double limit = SeriesChecks.SpikeLimit(channel, step);
            Spike.Test(values, limit, 2 * limit, test);
            Spike.SpareNeighbours(values, test);
            int spikes = test.Count(f => f is QualityFlag.Suspect or QualityFlag.Fail);
            if (spikes > 0)
            {
                yield return $"{Say.Count(spikes, "step")} jumped more than {Say.Number(Math.Round(limit, 1))}{Units.Difference(channel.Quantity)} away from both neighbours; {Say.Count(test.Count(f => f == QualityFlag.Fail), "step")} of them not used.";
            }
        }

        if (double.IsFinite(channel.FlatHours))
        {
            ReadOnlySpan<QualityFlag> flags = period.Frame.Flags(series.Key).AsSpan()[period.FirstStep..];
            (int first, int last) = LongestFlat(values, channel, step, flags);
            if (last > first)
            {
                Instant start = period.Frame.Axis.StartOf(period.FirstStep + first);
                yield return $"Did not move for {Say.Hours(step * (last - first + 1))} from {Say.Time(start, period.Frame.Axis.Zone)}: it may be stuck.";
            }
        }
    }

    /// <summary>The longest flagged stretch within the flat tolerance below saturation; first = last when there is none.</summary>
    private static (int First, int Last) LongestFlat(double[] values, Channel channel, Duration step, ReadOnlySpan<QualityFlag> flags)
    {
        int needed = (int)(Duration.FromHours(channel.FlatHours) / step);
        (int First, int Last) best = (0, 0);
        for (int first = 0, i = 1; i <= values.Length; i++)
        {
            bool goesOn = i < values.Length && !IsSaturated(channel, values[i])
                && Math.Abs(values[i] - values[first]) < Math.Max(channel.FlatTolerance, double.Epsilon);
            if (!goesOn)
            {
                bool doubtful = flags[i - 1] is QualityFlag.Suspect or QualityFlag.Fail;
                best = doubtful && i - 1 - first >= needed && i - 1 - first > best.Last - best.First ? (first, i - 1) : best;
                first = i;
            }
        }

        return best;
    }

    private static bool IsSaturated(Channel channel, double value)
        => channel.Quantity == Quantity.RelativeHumidity && value >= SeriesChecks.SaturatedPct;
}
