using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Pots that stood wet in the last round of the day.</summary>
internal static class WetAtDusk
{
    public const string Id = "wetAtDusk";

    private const int FewestChecks = 6; // choice of this project
    private const double Share = 0.25; // likewise

    public static Candidate? Of(Evidence evidence)
        => evidence.Pots.Pots?.Band is { } band && band.LateChecks >= FewestChecks && band.LateWet >= Share * band.LateChecks
            ? new Candidate(
                Id,
                Standing.Habit,
                Phrase.Of($"{band.LateWet} of {Say.Count(band.LateChecks, "pot check")} late in the day found pots at level {Say.Number(band.High)} or wetter."),
                Phrase.Of("Water early enough that pots go into the night below the upper end of the band."),
                Phrase.Of("Common practice, no source. The band is the nursery file's, or 2 to 4 where it sets none."),
                [Phrase.Of($"Band {Say.Number(band.Low)} to {Say.Number(band.High)}; of all {band.Checks} checks {band.Wetter} were above it and {band.Drier} below.")])
            : null;
}
