using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Clock;

/// <summary>Holds the clock of a source against the sun: by its best light, else by outside temperature.</summary>
public static class SourceClock
{
    /// <summary>Checks the readings of one source.</summary>
    /// <param name="nursery">The place and its zone.</param>
    /// <param name="stampZone">Zone in which the stamps were read.</param>
    /// <param name="batch">The readings.</param>
    public static ClockCheck Check(NurserySettings nursery, DateTimeZone stampZone, ReadingBatch batch)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        ArgumentNullException.ThrowIfNull(batch);
        ClockPlace place = new(nursery, stampZone);
        return StampHabits.Of(batch.UtcMicros, stampZone) is ClockVerdict habit ? ClockWords.Habit(habit, place)
            : batch.UtcMicros.Length < 2 ? ClockWords.NotKnown(Phrase.Of("There are too few rows to hold this clock against the sun."))
            : ByTheSun(place, batch with { StepSeconds = StepOf(batch) });
    }

    /// <summary>The zone of an export's stamps; the nursery's where the nursery file has no such export.</summary>
    public static DateTimeZone ZoneOf(NurserySettings nursery, string house, string source)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return nursery.Exports.FirstOrDefault(e => e.Kind is null && e.House == house && e.Name == source)?.Time.Zone ?? nursery.Zone;
    }

    /// <summary>Whether a channel tells of the time of day.</summary>
    public static bool IsJudged(string channel) => channel == ClockLimits.Temperature || ClockLimits.LightChannels.Any(c => c.Channel == channel);

    private static ClockCheck ByTheSun(ClockPlace place, ReadingBatch batch)
    {
        (ColumnKey Key, double[] Values, double SystematicMin)[] lights = [.. Lights(batch)];
        ClockCheck[] byLight = new ClockCheck[lights.Length];
        Parallel.For(0, lights.Length, i => byLight[i] = LightClock.Check(place, batch, lights[i].Key, lights[i].Values, lights[i].SystematicMin));
        ClockCheck? known = byLight.FirstOrDefault(c => c.Verdict != ClockVerdict.NotKnown);
        if (known is not null)
        {
            return known;
        }

        string why = byLight.Length > 0 ? byLight[0].Sentence + " " : "";
        (ColumnKey Key, double[] Values)? outside = Column(batch, ClockLimits.Temperature);
        ClockCheck? swing = outside is { } column ? SwingClock.Check(place, batch, column.Key, column.Values, why) : null;
        return swing ?? (byLight.Length > 0 ? byLight[0] : ClockWords.NotKnown(Phrase.Of("This export has no light to hold its clock against the sun, and no outside temperature.")));
    }

    private static IEnumerable<(ColumnKey Key, double[] Values, double SystematicMin)> Lights(ReadingBatch batch)
    {
        foreach ((string channel, double systematic) in ClockLimits.LightChannels)
        {
            foreach ((ColumnKey key, double[] values) in Columns(batch, channel))
            {
                yield return (key, values, systematic);
            }
        }
    }

    private static (ColumnKey Key, double[] Values)? Column(ReadingBatch batch, string channel)
        => Columns(batch, channel).Select(c => ((ColumnKey, double[])?)c).FirstOrDefault();

    /// <summary>The columns of a channel without values that cannot be.</summary>
    private static IEnumerable<(ColumnKey Key, double[] Values)> Columns(ReadingBatch batch, string channel)
    {
        Channel limits = ChannelCatalogue.Get(channel);
        foreach ((string name, double[] values) in batch.Columns)
        {
            if (ColumnKey.Parse(name) is var key && key.Channel == channel)
            {
                yield return (key, [.. values.Select(v => v >= limits.FailLow && v <= limits.FailHigh ? v : double.NaN)]);
            }
        }
    }

    private static int StepOf(ReadingBatch batch)
    {
        if (batch.StepSeconds > 0)
        {
            return batch.StepSeconds;
        }

        long[] steps = [.. batch.UtcMicros.Zip(batch.UtcMicros.Skip(1), (a, b) => b - a).Order()];
        return (int)Math.Clamp(steps[steps.Length / 2] / 1_000_000, 1, int.MaxValue);
    }
}

/// <summary>Where a clock stands and how its stamps were read.</summary>
/// <param name="Nursery">The nursery.</param>
/// <param name="StampZone">Zone in which the stamps were read.</param>
public sealed record ClockPlace(NurserySettings Nursery, DateTimeZone StampZone)
{
    /// <summary>Date by the clock of a moment. [s after 1970-01-01 00:00 UTC]</summary>
    public LocalDate DateOf(double unixSeconds) => Instant.FromUnixTimeSeconds((long)unixSeconds).InZone(StampZone).Date;
}
