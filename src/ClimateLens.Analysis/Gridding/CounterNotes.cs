using System.Globalization;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;

namespace ClimateLens.Analysis.Gridding;

/// <summary>Says of each counter what it came to in the period, and how often it fell.</summary>
internal static class CounterNotes
{
    /// <summary>Adds a sentence to each counter that has a reading in the period.</summary>
    public static SensorNotes Add(SensorNotes notes, IEnumerable<ListedSeries> listed, HouseInput input)
    {
        long from = input.Period.Start.ToUnixTimeTicks() / 10, to = input.Period.End.ToUnixTimeTicks() / 10;
        foreach (ListedSeries item in listed)
        {
            if (item.Counter is CounterAmounts counter)
            {
                bool InPeriod(int row) => item.Batch.UtcMicros[row] > from && item.Batch.UtcMicros[row] <= to;
                double sum = Enumerable.Range(0, counter.Values.Length).Where(row => InPeriod(row) && double.IsFinite(counter.Values[row])).Sum(row => counter.Values[row]);
                string falls = Falls([.. counter.Events.Where(e => InPeriod(e.Row)).Select(e => e.Event)]);
                notes = notes.With(item.Series.Key, $"A counter: {Say.Number(Math.Round(sum, 2))}{Units.Symbol(item.Series.Channel.Quantity)} in the period{falls}.");
            }
        }

        return notes;
    }

    private static string Falls(CounterEvent[] events)
    {
        string Times(CounterEvent what, string words)
        {
            int count = events.Count(e => e == what);
            return count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"; {words} {(count == 1 ? "once" : $"{count} times")}");
        }

        return Times(CounterEvent.Reset, "it began anew") + Times(CounterEvent.Rollover, "it ran over its last digit") + Times(CounterEvent.Backwards, "it fell by a little, which is no amount,");
    }
}
