using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Pots that went dry: how to wet them again, and that their roots want looking at.</summary>
internal static class DryPots
{
    public const string Id = "dryPots";

    private const int MostFacts = 5;

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Pots.Pots is not { DryDowns: { IsEmpty: false } dry })
        {
            return null;
        }

        int soaked = dry.Count(d => d.SaturatedAfter == true);
        string after = soaked == 0 ? "" : Phrase.Of($" It was seen saturated within a day {(soaked == 1 ? Phrase.Of("once") : Phrase.Of($"{soaked} times"))}: soaked at once after drying, roots are open to rot.");
        return new Candidate(
            Id,
            Standing.Crop + dry.Length,
            Phrase.Of($"A pot was found dry (level 1, or leaves that hang) {(dry.Length == 1 ? Phrase.Of("once") : Phrase.Of($"{dry.Length} times"))}, on {Say.List([.. dry.Select(d => RootSignals.BenchName(d.Bench)).Distinct().Order(StringComparer.Ordinal).Select(Say.InSentence)])}.{after}"),
            Phrase.Of("Wet dry pots gently, a little at a time, and let them drain in between. Tip a few out and look at the roots: white and firm, or brown and soft."),
            Phrase.Of("Common practice, no source; that dried or flooded roots are open to rot is from the Pacific Northwest handbook. Any treatment follows the label and a licensed person."),
            [.. dry.Take(MostFacts).Select(Fact)]);
    }

    private static string Fact(DryDown d)
    {
        string pot = d.Pot.Length > 0 ? Phrase.Of($", pot {d.Pot}") : "";
        string level = d.Level is { } l ? Phrase.Of($"level {Say.Number(l)}, ") : "";
        string watered = d.HoursToWatering is { } hours ? Phrase.Of($"; watered {Say.Number(hours, 0)} h later") : Phrase.Of("; no watering is known within a day");
        string saturated = d.SaturatedAfter switch { true => Phrase.Of(", then saturated"), false => Phrase.Of(", not saturated after"), null => "" };
        return $"{RootSignals.BenchName(d.Bench)}{pot}, {Nursery.Time.TimeWords.Moment(d.At)}: {level}{LeafSigns.Words(d.Leaves)}{watered}{saturated}.";
    }
}
