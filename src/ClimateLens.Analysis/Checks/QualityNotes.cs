using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>Says in plain sentences what the tests found in a series during the period (not its run-in).</summary>
internal static class QualityNotes
{
    public static IEnumerable<string> On(HousePeriod period, Series series, SeriesFlags flags)
        => Range(period, series, flags)
            .Concat(ZeroNotes(period, series, flags))
            .Concat(Jumps(period, series, flags))
            .Concat(StillNotes.On(period, series, flags))
            .Concat(OverGaps(period, series, flags));

    private static IEnumerable<string> Range(HousePeriod period, Series series, SeriesFlags flags)
    {
        Channel channel = series.Channel;
        string unit = Units.Symbol(channel.Quantity);
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        int[] outside = [.. Steps(period).Where(i => flags.Found(QualityCheck.GrossRange, i))];
        double[] impossible = [.. outside.Select(i => values[i]).Where(v => v < channel.FailLow || v > channel.FailHigh)];
        if (impossible.Length > 0)
        {
            yield return Phrase.Of($"{Say.Count(impossible.Length, "step")} outside the possible range of {Say.Number(channel.FailLow)} to {Say.Number(channel.FailHigh)}{unit}{Codes(impossible)}: not used.");
        }

        double[] unusual = [.. outside.Where(i => flags.RolledUp[i] == QualityFlag.Suspect).Select(i => values[i])];
        if (unusual.Length > 0)
        {
            yield return Phrase.Of($"{Say.Count(unusual.Length, "step")} outside the usual range of {Say.Number(channel.SuspectLow)} to {Say.Number(channel.SuspectHigh)}{unit} ({Span(unusual)}{unit}): used, and counted as doubtful.");
        }
    }

    /// <summary>One number again and again is more likely a code for a missing value than a reading.</summary>
    private static string Codes(double[] impossible)
    {
        var most = impossible.GroupBy(v => v).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First();
        return most.Count() >= 3 ? Phrase.Of($" ({Say.Number(most.Key)} in {most.Count()} of them; if that is a code for a missing value, add it to missingValues)") : $" ({Span(impossible)})";
    }

    private static string Span(double[] values)
        => values.Min() == values.Max() ? Say.Number(Math.Round(values[0], 2)) : Phrase.Of($"{Say.Number(Math.Round(values.Min(), 2))} to {Say.Number(Math.Round(values.Max(), 2))}");

    private static IEnumerable<string> ZeroNotes(HousePeriod period, Series series, SeriesFlags flags)
    {
        int all = Steps(period).Count(i => flags.Found(QualityCheck.Zero, i));
        int both = all == 0 ? 0 : Zeros.WithoutPower(period, series).Skip(period.FirstStep).Count(zero => zero);
        if (both > 0)
        {
            yield return Phrase.Of($"{Say.Count(both, "step")} with temperature and humidity both exactly 0, as from an instrument without power: not used.");
        }

        if (all > both)
        {
            yield return Phrase.Of($"{Say.Count(all - both, "step")} of exactly 0 that no neighbouring value leads to, as from an instrument without power: not used.");
        }
    }

    private static IEnumerable<string> Jumps(HousePeriod period, Series series, SeriesFlags flags)
    {
        string unit = Units.Difference(series.Channel.Quantity);
        int[] spikes = [.. Steps(period).Where(i => flags.Found(QualityCheck.Spike, i))];
        if (spikes.Length > 0)
        {
            double limit = SeriesChecks.SpikeLimit(series.Channel, period.Frame.Axis.Step);
            int failed = spikes.Count(i => flags.Of(QualityCheck.Spike)[i] == QualityFlag.Fail);
            yield return Phrase.Of($"{Say.Count(spikes.Length, "step")} jumped more than {Say.Number(Math.Round(limit, 1))}{unit} away from both neighbours; {failed} not used.");
        }

        int steps = Steps(period).Count(i => flags.Found(QualityCheck.RateOfChange, i) && !flags.Found(QualityCheck.Spike, i));
        if (steps > 0)
        {
            double limit = SeriesChecks.StepLimit(series.Channel, period.Frame.Axis.Step);
            yield return Phrase.Of($"{Say.Count(steps, "step")} more than {Say.Number(Math.Round(limit, 1))}{unit} away from the one before: used, and counted as doubtful.");
        }
    }

    private static IEnumerable<string> OverGaps(HousePeriod period, Series series, SeriesFlags flags)
    {
        int count = Steps(period).Count(i => flags.Found(QualityCheck.OverGap, i));
        if (count > 0)
        {
            yield return Phrase.Of($"{Say.Count(count, "amount")} came at an unknown time in a gap and {(count == 1 ? Phrase.Of("stands") : Phrase.Of("stand"))} at its end: counted as doubtful.");
        }
    }

    private static IEnumerable<int> Steps(HousePeriod period) => Enumerable.Range(period.FirstStep, period.Frame.Axis.Count - period.FirstStep);
}
