using System.Collections.Immutable;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.Reviews;

/// <summary>How many records of each kind fall into the period, and what is not made of them yet.</summary>
internal static class RecordCounts
{
    private const string NotJudged = "read and kept; not judged yet";

    /// <summary>By kind in camelCase; null when the period has none.</summary>
    public static ImmutableSortedDictionary<string, RecordCount>? Of(HouseInput input)
    {
        var counts = InPeriod(input)
            .GroupBy(r => r.Kind)
            .ToImmutableSortedDictionary(g => RecordKinds.WordOf(g.Key), g => new RecordCount(g.Count(), NoteOn(g.Key)), StringComparer.Ordinal);
        return counts.Count == 0 ? null : counts;
    }

    /// <summary>Pot checks; null when the period has none.</summary>
    public static RecordCount? Pots(HouseInput input)
    {
        int count = InPeriod(input).Count(r => r.Kind == RecordKind.PotChecks);
        return count == 0 ? null : new RecordCount(count, NotJudged);
    }

    private static IEnumerable<RecordRow> InPeriod(HouseInput input)
        => input.Records.Where(r => r.At >= input.Period.Start && r.At < input.Period.End);

    private static string NoteOn(RecordKind kind) => kind is RecordKind.Waterings or RecordKind.PlantWidths or RecordKind.Scouting ? "" : NotJudged;
}
