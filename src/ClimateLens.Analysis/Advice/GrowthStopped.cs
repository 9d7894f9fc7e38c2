using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>Plants that all but stopped growing, with what lies before it: a question and no verdict.</summary>
internal static class GrowthStopped
{
    public const string Id = "growthStopped";

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Care.Records is not { Stalls: { IsEmpty: false } stalls } records)
        {
            return null;
        }

        string[] before = [.. Before(evidence, records, stalls.Min(s => s.From))];
        return new Candidate(
            Id,
            Standing.Crop,
            Phrase.Of($"Did the plants stop growing? {string.Join(' ', stalls.Select(Sentence))}"),
            before.Length > 0 ? Phrase.Of("Look at the roots of the plants that were measured, and at what lies before the stall (below).") : Phrase.Of("Look at the roots of the plants that were measured; nothing in the records lies before the stall."),
            Phrase.Of("A question, not a verdict: other plants measured, another person, or a crop near its full size look alike."),
            [.. before]);
    }

    private static string Sentence(GrowthStall s)
        => Phrase.Of($"Mean {s.Measure} grew {Say.Number(s.GrewCm, 1)} cm from {Say.Day(s.From)} to {Say.Day(s.To)}, after a rate of {Say.Number(s.UsualCm, 1)} cm in as many days.");

    private static IEnumerable<string> Before(Evidence evidence, RecordsReport records, LocalDate from)
    {
        if (evidence.Pots.Pots is { DryDowns: { IsEmpty: false } dry })
        {
            yield return Phrase.Of($"A pot went dry {Say.Count(dry.Length, "time")} in the period, the first on {Say.Day(dry.Min(d => d.At.Date))}.");
        }

        foreach (RootReason reason in (evidence.Pots.Roots?.Reasons ?? []).Where(r => r.Id == "longSaturation"))
        {
            yield return reason.Text;
        }

        foreach (FloorEntry floor in records.Floors.Where(f => f.At.Date <= from.PlusDays(7)))
        {
            yield return Phrase.Of($"{RootSignals.BenchName(floor.Bench)} had {floor.What} on {Say.Day(floor.At.Date)}.");
        }

        foreach (TreatmentEntry treatment in records.Treatments)
        {
            yield return Phrase.Of($"Treated on {Say.Day(treatment.At.Date)}: {treatment.What}, {treatment.ActiveIngredient}.");
        }
    }
}
