using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>Somebody or something was logged inside a re-entry time.</summary>
internal static class InsideReentry
{
    public const string Id = "insideReentry";

    private const int MostFacts = 5;

    public static Candidate? Of(Evidence evidence)
        => evidence.Care.Records is { Reentry: { IsEmpty: false } inside }
            ? new Candidate(
                Id,
                Standing.Stop,
                Phrase.Of($"{Say.Count(inside.Length, "row")} of the records {(inside.Length == 1 ? Phrase.Of("lies") : Phrase.Of("lie"))} inside a re-entry time."),
                Phrase.Of("Ask who was there and when, and whether the times are right. Put a sign at the door until the time is over."),
                Phrase.Of("The label's re-entry time rules. A clock that is off, or a boom that waters by itself, looks the same."),
                [.. inside.Take(MostFacts).Select(e => Phrase.Of($"{(e.What == "potCheck" ? Phrase.Of("Pot check") : Phrase.Of("Watering"))} on {Say.InSentence(RootSignals.BenchName(e.Bench))}, {TimeWords.Moment(e.At)}{(e.Who.Length > 0 ? $" ({e.Who})" : "")}: treated {TimeWords.Moment(e.Treated)}, closed until {TimeWords.Moment(e.Until)}."))])
            : null;
}
