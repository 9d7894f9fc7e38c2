using System.Collections.Immutable;
using ClimateLens.Analysis.Stages;
using ClimateLens.HouseSimulator;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit.Simulated;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Causes;

/// <summary>Weeks of the simulated nursery with the four weeks before them; simulated weeks show that it runs, not that it is right.</summary>
internal static class SimulatedCauses
{
    private static readonly NurseryRun Run = NurseryRun.Of(1);

    /// <summary>House 1, watered by a boom over the leaves.</summary>
    public static HouseInput Boom { get; } = SimulatedWeek.Of(Run, Run.HouseOne, "2025-W42", null, Past.HistoryDays);

    /// <summary>House 2, watered by drip in the morning.</summary>
    public static HouseInput Drip { get; } = SimulatedWeek.Of(Run, Run.HouseTwo, "2025-W42", null, Past.HistoryDays);

    /// <summary>The same with no more history than these days before the period.</summary>
    public static HouseInput WithHistory(HouseInput input, int days)
        => input with { History = [.. input.History.Select(b => Since(b, (input.Period.Start - Duration.FromDays(days)).ToUnixTimeTicks() / 10))] };

    /// <summary>The same without some columns.</summary>
    public static HouseInput Without(HouseInput input, params string[] channels)
        => input with { Batches = [.. input.Batches.Select(b => Without(b, channels))], History = [.. input.History.Select(b => Without(b, channels))] };

    private static ReadingBatch Since(ReadingBatch batch, long micros)
    {
        int first = Array.FindIndex(batch.UtcMicros, t => t >= micros);
        return batch with { UtcMicros = batch.UtcMicros[first..], Columns = batch.Columns.ToImmutableSortedDictionary(c => c.Key, c => c.Value[first..], StringComparer.Ordinal) };
    }

    private static ReadingBatch Without(ReadingBatch batch, string[] channels)
        => batch with { Columns = batch.Columns.Where(c => !channels.Contains(c.Key.Split('@')[0])).ToImmutableSortedDictionary(StringComparer.Ordinal) };
}
