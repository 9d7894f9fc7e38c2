using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>The weather in the pots favoured root rot.</summary>
internal static class RootWeatherSeen
{
    public const string Id = "rootWeather";

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Pots.Roots is not { Signal: not "quiet" } roots)
        {
            return null;
        }

        string[] counted = [.. roots.Reasons.Where(r => r.Id != "recirculatedWater").Select(r => r.Text)];
        return new Candidate(
            Id,
            roots.Signal == "act" ? 2 * Standing.Crop : Standing.Habit,
            Phrase.Of($"The pots had root-rot weather ({(roots.Signal == "act" ? Phrase.Of("two or more signs") : Phrase.Of("one sign"))}). {string.Join(' ', counted)}"),
            Phrase.Of("Look at roots on the benches named; let the pots drain and dry to the lower end of the band before they are watered again."),
            Phrase.Of("A signal with its reasons, not a chance of disease: limits and counting are choices of this project (docs/science/pots.md). If roots are brown, have them looked at before anything is used; the label and a licensed person rule."),
            [.. roots.Reasons.Select(r => Phrase.Of($"{r.Text} Source: {r.Source}."))]);
    }
}
