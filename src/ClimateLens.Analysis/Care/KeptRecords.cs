using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>How many records of each kind fall into the period, when the last one was, and what was scouted by bench.</summary>
internal static class KeptRecords
{
    /// <summary>Kinds with a record in the period or before it, by their word.</summary>
    public static ImmutableSortedDictionary<string, RecordCount> Kinds(HouseInput input) => input.Records
        .Where(r => r.At < input.Period.End)
        .GroupBy(r => r.Kind)
        .ToImmutableSortedDictionary(g => RecordKinds.WordOf(g.Key), g => Count(input, [.. g.Select(r => r.At)]), StringComparer.Ordinal);

    /// <summary>Counts of affected plants of the season by bench and symptom, in time order.</summary>
    public static ImmutableArray<ScoutedBench> Scouted(HouseInput input) =>
    [
        .. input.Records
            .Where(r => r.Kind == RecordKind.Scouting && r.At < input.Period.End && r.At.InZone(input.Nursery.Zone).Date >= Treatments.SeasonStart(input) && r.Number("count") >= 0)
            .Select(r => new ScoutedBench(r.At.InZone(input.Nursery.Zone).ToOffsetDateTime(), r.Text("bench"), r.Text("symptom").ToLowerInvariant(), r.Number("count")!.Value)),
    ];

    private static RecordCount Count(HouseInput input, Instant[] times)
    {
        int own = times.Count(t => input.Period.Contains(t));
        int days = (int)(input.Period.End - times.Max()).TotalDays;
        return new(own, own > 0 ? "" : Phrase.Of($"none in this period; the last one {Say.Count(days, "day")} before its end"));
    }
}
