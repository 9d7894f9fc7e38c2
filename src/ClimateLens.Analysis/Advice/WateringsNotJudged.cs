using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Waterings whose method is not known. Each counts as one hour at stake: a choice of this project, no source.</summary>
internal static class WateringsNotJudged
{
    public const string Id = "wateringsNotJudged";

    private const int MostFacts = 10;

    public static Candidate? Of(Evidence evidence)
    {
        if (UnknownMethods.Of(evidence.Period.Input, evidence.Waterings) is not UnknownMethods methods)
        {
            return null;
        }

        return new Candidate(
            Id,
            methods.Unknown.Count,
            Phrase.Of($"{methods.Unknown.Count} of {Say.Count(methods.Total, "watering")} could not be judged: {Why(methods)}."),
            Phrase.Of("Write one of these words in the log, or set method for the valve column in the nursery file: boom, sprinkler, hand, hose, drip, ebb & flow, flood floor, fog."),
            Phrase.Of("Waterings that are not judged may have wet leaves late in the day."),
            [.. methods.Unknown.Take(MostFacts).Select(w => Fact(evidence, w))]);
    }

    private static string Why(UnknownMethods methods)
    {
        string words = methods.Words.Count == 1
            ? Phrase.Of($"the log's method word {methods.Words[0]} is not known")
            : Phrase.Of($"the log's method words {Say.List(methods.Words)} are not known");
        return methods.WithWord == 0 ? Phrase.Of("no method is given")
            : methods.WithoutWord == 0 ? words
            : Phrase.Of($"{words}; {methods.WithoutWord} {(methods.WithoutWord == 1 ? Phrase.Of("has") : Phrase.Of("have"))} no method");
    }

    private static string Fact(Evidence evidence, Watering watering)
        => $"{Say.Time(watering.Start.ToInstant(), evidence.Zone)}: {watering.Source}.";
}
