using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Two people who grade unlike by half a level or more.</summary>
internal static class GradersApart
{
    public const string Id = "gradersApart";

    private const double Worth = 0.25; // of a level: half the finest step; choice of this project

    public static Candidate? Of(Evidence evidence)
    {
        GraderPair[] apart = [.. (evidence.Pots.Pots?.Agreement.Pairs ?? []).Where(p => p.Bias is { } b && (b.Low >= Worth || b.High <= -Worth))];
        if (apart.Length == 0)
        {
            return null;
        }

        return new Candidate(
            Id,
            Standing.Habit,
            string.Join(' ', apart.Select(Sentence)),
            Phrase.Of("Grade a few pots together, dry to wet, with the signs of each level at hand, until you agree (climatelens sheet prints them)."),
            Phrase.Of("On pots that both graded within an hour, over the weeks before the period too. Who of them is right is not known without weights."),
            [.. apart.Select(p => Phrase.Of($"{p.First} and {p.Second}: {Say.Count(p.Pots, "pot")} in {Say.Count(p.Rounds, "round")}; weighted kappa {Kappa(p.KappaQuadratic)} (quadratic), {Kappa(p.KappaLinear)} (linear)."))]);
    }

    private static string Sentence(GraderPair p)
    {
        bool wetter = p.Bias!.Value > 0;
        (string one, string other) = wetter ? (p.First, p.Second) : (p.Second, p.First);
        (double low, double high) = wetter ? (p.Bias.Low, p.Bias.High) : (-p.Bias.High, -p.Bias.Low);
        return Phrase.Of($"{one} grades {Say.Number(Math.Abs(p.Bias.Value), 1)} levels wetter than {other} ({Say.Number(low, 1)} to {Say.Number(high, 1)}).");
    }

    private static string Kappa(Estimate? kappa) => kappa is null ? Phrase.Of("not known") : Phrase.Of($"{Say.Number(kappa.Value, 2)} ({Say.Number(kappa.Low, 2)} to {Say.Number(kappa.High, 2)})");
}
