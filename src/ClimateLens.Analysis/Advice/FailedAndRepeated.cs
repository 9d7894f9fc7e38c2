using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>A treatment after which as many plants were found affected, repeated with the same resistance group.</summary>
/// <remarks><b>Rule:</b> the symptom that was scouted bears the name of the purpose; the last count before the repeat is no lower than the last one before the first treatment, and both lie within four weeks of it.</remarks>
internal static class FailedAndRepeated
{
    public const string Id = "failedAndRepeated";

    public static Candidate? Of(Evidence evidence)
    {
        string[] facts =
        [
            .. Rotation.InARow(evidence.Period.Input, evidence.Care.Treatments)
                .Where(pair => pair.Again.At - pair.Before.At <= Duration.FromDays(Rotation.SoonDays))
                .Select(pair => Fact(evidence, pair.Before, pair.Again))
                .OfType<string>(),
        ];
        return facts.Length == 0
            ? null
            : new Candidate(
                Id,
                Standing.Crop,
                Phrase.Of("A treatment did not lower the count of affected plants and was repeated with the same resistance group."),
                Phrase.Of("Have the cause confirmed before anything more is used: it may be another disease, a resistant strain, or a dose that did not reach it."),
                Phrase.Of("Counts fall and rise for other reasons too. The label and a licensed person rule; this page recommends no product."),
                [.. facts]);
    }

    private static string? Fact(Evidence evidence, Treatment before, Treatment again)
    {
        double? first = Count(evidence, before.Purpose, before.At - Duration.FromDays(Rotation.SoonDays), before.At);
        double? second = Count(evidence, before.Purpose, before.At, again.At);
        return first > 0 && second >= first
            ? Phrase.Of($"{before.Purpose}: {Say.Number(first.Value)} plants before the treatment of {Say.Time(before.At, evidence.Zone)}, {Say.Number(second.Value)} before that of {Say.Time(again.At, evidence.Zone)}, both with group {Say.List([.. again.Codes.Intersect(before.Codes)])}.")
            : null;
    }

    /// <summary>Plants of the last day of counting after one moment and up to another, over all benches.</summary>
    private static double? Count(Evidence evidence, string symptom, Instant after, Instant upTo)
        => evidence.Period.Input.Records
            .Where(r => r.Kind == RecordKind.Scouting && r.At > after && r.At <= upTo && r.Number("count") >= 0 && string.Equals(r.Text("symptom"), symptom, StringComparison.OrdinalIgnoreCase))
            .GroupBy(r => r.At.InZone(evidence.Zone).Date)
            .OrderBy(day => day.Key)
            .Select(day => (double?)day.Sum(r => r.Number("count")!.Value))
            .LastOrDefault();
}
