using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Floods of benches or floors on days with little light: pots drink little and the water stays in the air. Common practice, no source. Each counts as one hour at stake, a choice of this project.</summary>
internal static class FloodOnDullDay
{
    public const string Id = "floodOnDullDay";

    private const int MostFacts = 10;

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Causes.Floods is not { } floods || floods.Floods.Where(f => f.Dull == true).ToArray() is not { Length: > 0 } dull)
        {
            return null;
        }

        string stays = floods is { Dull.EffectGm3: { } dark, Bright.EffectGm3: { } bright }
            ? Phrase.Of($" After floods on dull days the air held {Gm3(dark, floods.Dull)} more water than in alike hours without one, after those on bright days {Gm3(bright, floods.Bright)}.")
            : "";
        return new Candidate(
            Id,
            dull.Length,
            Phrase.Of($"{dull.Length} of {Say.Count(floods.Floods.Length, "flood")} fell on days with less than {Say.Number(floods.LimitMJm2)} MJ/m² of sun over the crop.{stays}"),
            Phrase.Of("On dull days flood only what needs it, in the morning, and vent with heat until floor and benches are dry."),
            Phrase.Of("Common practice, no source; the limit is a choice of this project, set dullDayMJm2 in the nursery file for another."),
            [.. dull.Take(MostFacts).Select(f => Phrase.Of($"{Say.Time(f.Start.ToInstant(), evidence.Zone)}{(f.Bench.Length == 0 ? "" : Phrase.Of($", bench {f.Bench}"))}: {Say.Number(Math.Round(f.DaySunMJm2 ?? 0, 1))} MJ/m² that day."))]);
    }

    private static string Gm3(Estimate effect, FloodEffect of)
        => effect.Low == effect.High ? Phrase.Of($"{Say.Number(Math.Round(effect.Value, 1))} g/m³ ({Say.Count(of.Matched, "round")} compared, too few for a range)")
            : Phrase.Of($"{Say.Number(Math.Round(effect.Value, 1))} g/m³ ({Say.Number(Math.Round(effect.Low, 1))} to {Say.Number(Math.Round(effect.High, 1))})");
}
