using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Several people grade, and too few pots were graded by two of them to say whether they do it alike.</summary>
internal static class GradersNotKnown
{
    public const string Id = "gradersNotKnown";

    public static Candidate? Of(Evidence evidence)
        => evidence.Pots.Pots?.Agreement is { Graders.Length: > 1, PotsNeeded: { } needed } agreement
            ? new Candidate(
                Id,
                Standing.Ask,
                Phrase.Of($"Whether {Say.List(agreement.Graders)} grade alike is not known well enough."),
                Phrase.Of($"Walk one round side by side: {needed} pots from dry to wet, each person for themselves, without looking at the other's (climatelens sheet --pairs {needed} prints the sheet)."),
                Phrase.Of($"As many pots find a difference of half a level nine times in ten; a smaller one may stay unseen."),
                [.. Facts(agreement)])
            : null;

    private static IEnumerable<string> Facts(AgreementReport agreement)
        => agreement.Pairs.IsEmpty
            ? [Phrase.Of("No pot was graded by two people within an hour.")]
            : agreement.Graders.SelectMany((one, i) => agreement.Graders.Skip(i + 1).Select(other => Fact(agreement, one, other))).OfType<string>();

    private static string? Fact(AgreementReport agreement, string one, string other)
    {
        GraderPair? pair = agreement.Pairs.FirstOrDefault(p => p.First == one && p.Second == other);
        return pair is null ? Phrase.Of($"{one} and {other}: no pot graded by both within an hour.") : pair.Pots < pair.PotsNeeded ? Phrase.Of($"{one} and {other}: {Say.Count(pair.Pots, "pot")} of {pair.PotsNeeded}.") : null;
    }
}
