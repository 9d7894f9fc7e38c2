using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Rounds of pot checks that were due and not walked.</summary>
internal static class RoundsMissed
{
    public const string Id = "roundsMissed";

    private const double Kept = 0.8; // choice of this project

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Pots.Pots is not { } pots)
        {
            return null;
        }

        int due = pots.Days.Sum(d => d.Due), walked = pots.Days.Sum(d => Math.Min(d.Walked, d.Due));
        return walked >= Kept * due
            ? null
            : new Candidate(
                Id,
                Standing.Ask,
                Phrase.Of($"{walked} of {Say.Count(due, "round")} of pot checks were walked."),
                Phrase.Of("Share the rounds out by name, weekends too; a round of eight pots takes about three minutes."),
                Phrase.Of("Three rounds a day are common practice, no source; set rounds and weekendRounds under [house.pots] to what you mean to walk."),
                [.. pots.Rounds.Select(Fact)]);
    }

    private static string Fact(PotRoundReport r) => Phrase.Of($"{char.ToUpperInvariant(r.Name[0])}{r.Name[1..]}: {r.WeekdaysWalked} of {r.WeekdaysDue} on weekdays, {(r.WeekendDue == 0 ? Phrase.Of("not due") : Phrase.Of($"{r.WeekendWalked} of {r.WeekendDue}"))} at the weekend.");
}
