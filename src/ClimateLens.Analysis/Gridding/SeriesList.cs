using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Gridding;

/// <summary>A series and the batch that holds its values.</summary>
internal sealed record ListedSeries(Series Series, ReadingBatch Batch, double[] Values)
{
    /// <summary>Its amounts where it is a counter, else null.</summary>
    public CounterAmounts? Counter { get; init; }
}

/// <summary>
/// The series of a house in the order that decides which of several sensors is the main one: the house's own before the
/// nursery's, then the catalogue's order of channels, then ordinal by sensor name, then the source
/// with the most usable readings (by the time they stand for), then ordinal by source name.
/// </summary>
internal static class SeriesList
{
    public static ImmutableArray<ListedSeries> Of(HouseInput input)
    {
        List<(Channel Channel, int Rank, string Sensor, ReadingBatch Batch, double[] Values)> found = [];
        foreach (ReadingBatch batch in input.Batches)
        {
            foreach ((string name, double[] values) in batch.Columns)
            {
                ColumnKey key = ColumnKey.Parse(name);
                if (ChannelCatalogue.TryGet(key.Channel, out Channel? channel))
                {
                    found.Add((channel, RankOf(channel), key.Sensor, batch, values));
                }
            }
        }

        HashSet<ColumnKey> taken = [];
        return
        [
            .. found
                .OrderBy(s => s.Batch.House == input.House.Id ? 0 : 1)
                .ThenBy(s => s.Rank)
                .ThenBy(s => s.Sensor, StringComparer.Ordinal)
                .ThenByDescending(s => UsableSeconds(input, s.Channel, s.Batch, s.Values))
                .ThenBy(s => s.Batch.Source, StringComparer.Ordinal)
                .Select(s => Listed(input, new Series(Distinct(taken, s.Channel, s.Sensor, s.Batch), s.Batch.House, s.Batch.Source, s.Sensor, s.Channel, s.Batch.StepSeconds), s.Batch, s.Values)),
        ];
    }

    private static ListedSeries Listed(HouseInput input, Series series, ReadingBatch batch, double[] values)
    {
        ColumnSettings? column = ColumnOf.Find(input, series.House, series.Source, series.Channel.Name, series.Sensor);
        CounterAmounts? counter = column is { Counter: true }
            ? CounterAmounts.Of(batch.UtcMicros, values, Math.Max(1, batch.StepSeconds) * 1_000_000L, ColumnOf.UnitOf(column, series.Channel))
            : null;
        return new ListedSeries(series, batch, values) { Counter = counter };
    }

    private static int RankOf(Channel channel)
    {
        for (int i = 0; i < ChannelCatalogue.All.Count; i++)
        {
            if (ReferenceEquals(ChannelCatalogue.All[i], channel))
            {
                return i;
            }
        }

        return ChannelCatalogue.All.Count;
    }

    /// <summary>Time that the possible readings of run-in and period stand for. [s]</summary>
    private static long UsableSeconds(HouseInput input, Channel channel, ReadingBatch batch, double[] values)
    {
        long from = Instant.Min(input.RunIn.Start, input.Period.Start).ToUnixTimeTicks() / 10, to = input.Period.End.ToUnixTimeTicks() / 10;
        long usable = 0;
        for (int row = 0; row < values.Length; row++)
        {
            bool loaded = batch.UtcMicros[row] >= from && batch.UtcMicros[row] < to;
            bool possible = channel.Gridding == Nursery.Channels.Gridding.Amount ? double.IsFinite(values[row]) : values[row] >= channel.FailLow && values[row] <= channel.FailHigh;
            usable += loaded && possible ? 1 : 0;
        }

        return usable * Math.Max(1, batch.StepSeconds);
    }

    /// <summary>Two sources may use one channel and sensor name; the later one's key takes the source's name in.</summary>
    private static ColumnKey Distinct(HashSet<ColumnKey> taken, Channel channel, string sensor, ReadingBatch batch)
    {
        ColumnKey key = new(channel.Name, sensor);
        for (int i = 2; !taken.Add(key); i++)
        {
            key = new ColumnKey(channel.Name, $"{sensor}@{batch.House}/{batch.Source}" + (i > 2 ? $"#{i}" : ""));
        }

        return key;
    }
}
