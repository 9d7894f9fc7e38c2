using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Advice;

/// <summary>Benches that were watered although their pots had hardly dried.</summary>
internal static class WateredTooWet
{
    public const string Id = "wateredTooWet";

    private const int Fewest = 2, MostFacts = 5; // choice of this project

    public static Candidate? Of(Evidence evidence)
    {
        LevelBeforeWatering[] wet = [.. (evidence.Pots.Pots?.BeforeWaterings ?? []).Where(w => w.Verdict == "tooWet")];
        int seen = evidence.Pots.Pots?.BeforeWaterings.Length ?? 0;
        return wet.Length < Fewest
            ? null
            : new Candidate(
                Id,
                Standing.Habit,
                Phrase.Of($"{wet.Length} of {Say.Count(seen, "watering")} with a pot check shortly before fell on pots that were still wet."),
                Phrase.Of("Lift a few pots before watering; a bench near the upper end of the band can wait."),
                Phrase.Of("Common practice, no source: pots that are never let dry to the middle of the band keep roots wet and the house humid. Still wet is half a level below the upper end of the band or above."),
                [.. wet.Take(MostFacts).Select(w => Phrase.Of($"{RootSignals.BenchName(w.Bench)}, {TimeWords.Moment(w.Start)}: level {Say.Number(w.Level, 1)} {Say.Number(w.HoursBefore, 1)} h before."))]);
    }
}
