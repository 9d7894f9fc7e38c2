using ClimateLens.Analysis.Gridding;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>
/// Waterings that valve and fog-line columns tell of: stretches with the valve open, at the source's own stamps rather than on
/// the grid; where stamps stray, at the times that they were meant for. Stretches of one valve that lie ten minutes apart or less are one watering (common practice, no source).
/// </summary>
internal static class ValveWaterings
{
    private static readonly Duration MergeGap = Duration.FromMinutes(10);

    /// <summary>Share of a reading's step under which a valve counts as shut. [1]</summary>
    private const double Shut = 0.01;

    /// <summary>Whether the house has a column that would tell of waterings.</summary>
    public static bool HasColumns(HouseInput input) => Columns(input).Any();

    /// <summary>All waterings, by column and in time order within each. What two exports tell of one valve at one time is one.</summary>
    public static IEnumerable<WateringEvent> Of(HouseInput input)
    {
        List<WateringEvent> all = [];
        foreach (var valve in Columns(input).GroupBy(c => c.Key))
        {
            List<WateringEvent> told = [];
            foreach ((ReadingBatch batch, ColumnKey key, double[] values) in valve)
            {
                WateringEvent[] events = [.. Events(input, batch, key, values)];
                told.AddRange(events.Where(e => !told.Any(t => t.IsLike(e) && t.Overlaps(e, Duration.Zero))));
            }

            all.AddRange(told);
        }

        return all;
    }

    private static IEnumerable<(ReadingBatch Batch, ColumnKey Key, double[] Values)> Columns(HouseInput input)
        => from batch in input.Batches
           where batch.House == input.House.Id
           from column in batch.Columns
           let key = ColumnKey.Parse(column.Key)
           where key.Channel is "valve" or "fogLine"
           select (batch, key, column.Value);

    private static ColumnSettings? SettingsOf(HouseInput input, ReadingBatch batch, ColumnKey key)
        => input.Nursery.Exports
            .Where(e => e.Kind is null && e.Name == batch.Source && e.House == batch.House)
            .SelectMany(e => e.Columns)
            .FirstOrDefault(c => c.Channel == key.Channel && c.Sensor == key.Sensor);

    private static IEnumerable<WateringEvent> Events(HouseInput input, ReadingBatch batch, ColumnKey key, double[] values)
    {
        ColumnSettings? settings = SettingsOf(input, batch, key);
        WateringMethod? method = settings?.Method ?? (key.Channel == "fogLine" ? WateringMethod.Fog : null);
        string source = Phrase.Of($"valve column {key} of \"{batch.Source}\"");
        foreach (Run run in Merged(Runs(batch, values, input.Period.Start)))
        {
            double? litres = settings?.LitresPerMinute * run.OpenMinutes;
            yield return new WateringEvent(run.Start, run.End, method, settings?.Bench ?? "", litres, source);
        }
    }

    /// <summary>One stretch a reading with the valve open. A reading holds until the next, or for its step when that is far.</summary>
    private static IEnumerable<Run> Runs(ReadingBatch batch, double[] values, Instant grid)
    {
        long step = Math.Max(1, batch.StepSeconds) * 1_000_000L;
        long[] stamps = MeantStamps.Of(batch.UtcMicros, step, grid.ToUnixTimeTicks() / 10, out _) ?? batch.UtcMicros;
        long shift = batch.StampSide == StampSide.IntervalEnd ? -step : 0;
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] > Shut)
            {
                long next = i + 1 < values.Length ? stamps[i + 1] - stamps[i] : step;
                long length = next <= 2 * step ? next : step;
                Instant start = Instant.FromUnixTimeTicks((stamps[i] + shift) * 10);
                yield return new Run(start, start + Duration.FromTicks(length * 10.0), Math.Min(values[i], 1) * length / 60e6);
            }
        }
    }

    private static IEnumerable<Run> Merged(IEnumerable<Run> runs)
    {
        Run? open = null;
        foreach (Run run in runs)
        {
            if (open is Run before && run.Start - before.End <= MergeGap)
            {
                open = new Run(before.Start, run.End, before.OpenMinutes + run.OpenMinutes);
                continue;
            }

            if (open is Run done)
            {
                yield return done;
            }

            open = run;
        }

        if (open is Run last)
        {
            yield return last;
        }
    }

    private readonly record struct Run(Instant Start, Instant End, double OpenMinutes);
}
