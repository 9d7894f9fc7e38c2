using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Checks;

/// <summary>Says of a series when it did not move or hardly moved, and the time at saturation apart from that.</summary>
internal static class StillNotes
{
    public static IEnumerable<string> On(HousePeriod period, Series series, SeriesFlags flags)
    {
        ImmutableArray<double> values = period.Frame.Values(series.Key);
        bool IsFull(int i) => series.Channel.Quantity == Quantity.RelativeHumidity && values[i] >= SeriesChecks.SaturatedPct;
        bool Stood(int i) => flags.Found(QualityCheck.FlatLine, i);
        bool Hardly(int i) => flags.Found(QualityCheck.AttenuatedSignal, i);
        int saturated = Enumerable.Range(period.FirstStep, values.Length - period.FirstStep).Count(i => (Stood(i) || Hardly(i)) && IsFull(i));
        TimeAxis axis = period.Frame.Axis;
        if (saturated > 0)
        {
            yield return Phrase.Of($"{Say.Hours(axis.Step * saturated)} at or above {Say.Number(SeriesChecks.SaturatedPct)} % without moving: condensing air or a saturated sensor, the data cannot tell; used, and counted as doubtful.");
        }

        if (Longest(period, i => Stood(i) && !IsFull(i)) is (Duration stood, string from))
        {
            yield return Phrase.Of($"Did not move for {Say.Hours(stood)} from {from}: it may be stuck.");
        }

        if (Longest(period, i => Hardly(i) && !Stood(i) && !IsFull(i)) is (Duration hardly, string since))
        {
            string unit = Units.Difference(series.Channel.Quantity);
            string least = Say.Number(series.Channel.LeastDailyRange) + (series.Channel.LeastDailyRange == 1 ? unit.TrimEnd('s') : unit);
            yield return Phrase.Of($"Moved by less than {least} a day for {Say.Hours(hardly)} from {since}: it may be stuck, covered or no longer in the air; used, and counted as doubtful.");
        }
    }

    /// <summary>The longest stretch of steps in the period, with its start; null when there is none.</summary>
    private static (Duration Length, string From)? Longest(HousePeriod period, Func<int, bool> isIn)
    {
        TimeAxis axis = period.Frame.Axis;
        (int first, int count) = (0, 0);
        for (int i = period.FirstStep, start = period.FirstStep; i < axis.Count; i++)
        {
            start = isIn(i) ? start : i + 1;
            (first, count) = i + 1 - start > count ? (start, i + 1 - start) : (first, count);
        }

        return count == 0 ? null : (axis.Step * count, Say.Time(axis.StartOf(first), axis.Zone));
    }
}
