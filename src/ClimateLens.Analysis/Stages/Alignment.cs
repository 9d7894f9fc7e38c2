using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Time;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// First stage: every source of the house, and of the nursery, on one grid from the start of the run-in to the end of the
/// period. The grid has the native step of the house's main source, the one with relative humidity, else air temperature.
/// </summary>
public static class Alignment
{
    /// <summary>Aligns all batches of a house period.</summary>
    public static HousePeriod Align(HouseInput input)
    {
        ImmutableArray<ListedSeries> listed = SeriesList.Of(input);
        ListedSeries? main = First(listed, "relativeHumidity") ?? First(listed, "airTemperature") ?? listed.FirstOrDefault();
        TimeAxis axis = AxisOf(input, GridStep.For(main?.Batch.StepSeconds ?? 3600));
        Dictionary<ReadingBatch, GridSource> sources = new(ReferenceEqualityComparer.Instance);
        Dictionary<ReadingBatch, bool[]> dead = new(ReferenceEqualityComparer.Instance);
        Dictionary<ColumnKey, bool[]> overGaps = [];
        Frame frame = new(axis);
        foreach (ListedSeries item in listed)
        {
            if (!sources.TryGetValue(item.Batch, out GridSource? source))
            {
                sources[item.Batch] = source = new GridSource(item.Batch, axis);
                dead[item.Batch] = Believable.DeadRows(item.Batch);
            }

            double[] values;
            if (item.Counter is CounterAmounts counter)
            {
                values = new double[axis.Count];
                overGaps[item.Series.Key] = Amounts.LayCounter(source, counter, values);
            }
            else
            {
                values = Gridder.Lay(source, item.Values, item.Series.Channel, dead[item.Batch]);
            }

            frame = frame.With(item.Series.Key, ImmutableCollectionsMarshal.AsImmutableArray(values), FlagsOf(values));
        }

        SunCalendar sun = new(axis.Start, axis.End, axis.Zone, input.Nursery.LatitudeDeg, input.Nursery.LongitudeDeg);
        return new HousePeriod(input, frame, axis.IndexOf(input.Period.Start), [.. listed.Select(s => s.Series)], sun, CounterNotes.Add(StrayNotes.AddTo(NotesOn(listed), listed, sources), listed, input))
        {
            Temperature = First(listed, "airTemperature")?.Series,
            Humidity = First(listed, "relativeHumidity")?.Series,
            Leaf = First(listed, "leafTemperature")?.Series,
            Events = [.. AllWaterings.Of(input, MeteredWaterings.Of(input, frame, listed.Select(s => s.Series), overGaps))],
            OverGap = overGaps.ToImmutableDictionary(),
            RowSeen = RowsSeen([.. listed.Where(s => JoinedSources.IsBehind(s.Series, main?.Series)).Select(s => sources[s.Batch])], axis.Count),
        };
    }

    /// <summary>From a whole number of hours before the period, at or before the start of the run-in, to the period's end.</summary>
    internal static TimeAxis AxisOf(HouseInput input, Duration step)
    {
        double runInHours = (input.Period.Start - input.RunIn.Start).TotalHours;
        Duration lead = Duration.FromHours((long)Math.Ceiling(Math.Max(0, runInHours)));
        Instant start = input.Period.Start - lead;
        int count = (int)Math.Ceiling((input.Period.End - start) / step);
        return new TimeAxis(start, step, count, input.Nursery.Zone);
    }

    private static ListedSeries? First(ImmutableArray<ListedSeries> listed, string channel)
        => listed.FirstOrDefault(s => s.Series.Channel.Name == channel);

    private static ImmutableArray<QualityFlag> FlagsOf(double[] values)
    {
        QualityFlag[] flags = new QualityFlag[values.Length];
        for (int i = 0; i < flags.Length; i++)
        {
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : QualityFlag.NotEvaluated;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(flags);
    }

    private static ImmutableArray<bool> RowsSeen(GridSource[] all, int count)
    {
        bool[] seen = new bool[count];
        foreach (GridSource source in all)
        {
            for (int row = 0; row < source.Batch.UtcMicros.Length; row++)
            {
                long step = source.StepOf(source.Begin(row));
                if (step >= 0 && step < count)
                {
                    seen[step] = true;
                }
            }
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(seen);
    }

    /// <summary>Where a house has several sensors of what the risk rests on, says which one rules.</summary>
    private static SensorNotes NotesOn(ImmutableArray<ListedSeries> listed)
    {
        SensorNotes notes = SensorNotes.None;
        foreach (string channel in (string[])["airTemperature", "relativeHumidity", "leafTemperature"])
        {
            ListedSeries[] same = [.. listed.Where(s => s.Series.Channel.Name == channel)];
            int sensors = same.Select(s => s.Series.Sensor).Distinct(StringComparer.Ordinal).Count();
            for (int i = 0; sensors > 1 && i < same.Length; i++)
            {
                if (i > 0 && JoinedSources.IsBehind(same[i].Series, same[0].Series))
                {
                    continue; // another export of the main sensor; it fills gaps, and is told so where that is done
                }

                notes = notes.With(same[i].Series.Key, i == 0
                    ? Phrase.Of($"The main one of {sensors}: all hours rest on it.")
                    : Phrase.Of($"Checked and shown only; the hours rest on {same[0].Series.Label} of \"{same[0].Series.Source}\"."));
            }
        }

        return notes;
    }
}
