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
    public static IEnumerable<string> On(HousePeriod period, Series series, SeriesFlags flags, bool[] zeros)
        => Range(period, series, flags.RolledUp, BothZero.Concerns(period, series) ? zeros : [])
            .Concat(Spikes(period, series, flags.Spike))
            .Concat(Flat(period, series, flags.Flat));

    private static IEnumerable<string> Range(HousePeriod period, Series series, QualityFlag[] rolledUp, bool[] zeros)
    {
        Channel channel = series.Channel;
        string unit = Units.Symbol(channel.Quantity);
        double[] values = period.Frame.Values(series.Key).AsSpan()[period.FirstStep..].ToArray();
        int impossible = values.Count(v => v < channel.FailLow || v > channel.FailHigh);
        if (impossible > 0)
        {
            yield return $"{Say.Count(impossible, "step")} outside the possible range of {Say.Number(channel.FailLow)} to {Say.Number(channel.FailHigh)}{unit}: not used.";
        }

        int unusual = values.Where((v, i) => (v < channel.SuspectLow || v > channel.SuspectHigh) && rolledUp[period.FirstStep + i] == QualityFlag.Suspect).Count();
        if (unusual > 0)
        {
            yield return $"{Say.Count(unusual, "step")} outside the usual range of {Say.Number(channel.SuspectLow)} to {Say.Number(channel.SuspectHigh)}{unit}: used, and counted as doubtful.";
        }

        int zero = zeros.Skip(period.FirstStep).Count(z => z);
        if (zero > 0)
        {
            yield return $"{Say.Count(zero, "step")} with temperature and humidity both exactly 0, as from an instrument without power: not used.";
        }
    }

    private static IEnumerable<string> Spikes(HousePeriod period, Series series, QualityFlag[] flags)
    {
        int failed = flags.Skip(period.FirstStep).Count(f => f == QualityFlag.Fail);
        int all = failed + flags.Skip(period.FirstStep).Count(f => f == QualityFlag.Suspect);
        if (all > 0)
        {
            double limit = SeriesChecks.SpikeLimit(series.Channel, period.Frame.Axis.Step);
            yield return $"{Say.Count(all, "step")} jumped more than {Say.Number(Math.Round(limit, 1))}{Units.Difference(series.Channel.Quantity)} away from both neighbours; {failed} not used.";
        }
    }

    /// <summary>Names the longest stretch without movement, and the time at saturation apart from it.</summary>
    private static IEnumerable<string> Flat(HousePeriod period, Series series, QualityFlag[] flags)
    {
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        (int First, int Last) longest = (0, -1);
        int saturated = 0;
        for (int first = period.FirstStep, i = first; i < flags.Length; i++)
        {
            bool still = flags[i] is QualityFlag.Suspect or QualityFlag.Fail;
            bool full = series.Channel.Quantity == Quantity.RelativeHumidity && values[i] >= SeriesChecks.SaturatedPct;
            saturated += still && full ? 1 : 0;
            first = still && !full ? first : i + 1;
            longest = i - first > longest.Last - longest.First ? (first, i) : longest;
        }

        TimeAxis axis = period.Frame.Axis;
        if (saturated > 0)
        {
            yield return $"{Say.Hours(axis.Step * saturated)} at or above {Say.Number(SeriesChecks.SaturatedPct)} % without moving: condensing air or a saturated sensor, the data cannot tell; used, and counted as doubtful.";
        }

        if (longest.Last >= longest.First)
        {
            Duration length = axis.Step * (longest.Last - longest.First + 1);
            yield return $"Did not move for {Say.Hours(length)} from {Say.Time(axis.StartOf(longest.First), axis.Zone)}: it may be stuck.";
        }
    }
}
