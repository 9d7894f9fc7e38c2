using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;

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
                notes = notes.With(item.Series.Key, Phrase.Of($"A counter: {Say.Number(Math.Round(sum, 2))}{Units.Symbol(item.Series.Channel.Quantity)} in the period{falls}."));
            }
        }

        return notes;
    }

    private static string Falls(CounterEvent[] events)
    {
        string Times(CounterEvent what, string words)
        {
            int count = events.Count(e => e == what);
            return count == 0 ? "" : Phrase.Of($"; {words} {(count == 1 ? Phrase.Of("once") : Phrase.Of($"{count} times"))}");
        }

        return Times(CounterEvent.Reset, Phrase.Of("it began anew")) + Times(CounterEvent.Rollover, Phrase.Of("it ran over its last digit")) + Times(CounterEvent.Backwards, Phrase.Of("it fell by a little, which is no amount,"));
    }
}
