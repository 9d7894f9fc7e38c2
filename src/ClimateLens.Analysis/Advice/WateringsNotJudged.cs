using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.WateringEvents;

namespace ClimateLens.Analysis.Advice;

/// <summary>Waterings whose method is not known. Each counts as one hour at stake: a choice of this project, no source.</summary>
internal static class WateringsNotJudged
{
    private const int MostFacts = 10;

    public static Candidate? Of(Evidence evidence)
    {
        if (UnknownMethods.Of(evidence.Period.Input, evidence.Waterings) is not UnknownMethods methods)
        {
            return null;
        }

        return new Candidate(
            "wateringsNotJudged",
            methods.Unknown.Count,
            $"{methods.Unknown.Count} of {Say.Count(methods.Total, "watering")} could not be judged: {Why(methods)}.",
            "Write one of these words in the log, or set method for the valve column in the nursery file: boom, sprinkler, hand, hose, drip, ebb & flow, flood floor, fog.",
            "Waterings that are not judged may have wet leaves late in the day.",
            [.. methods.Unknown.Take(MostFacts).Select(w => Fact(evidence, w))]);
    }

    private static string Why(UnknownMethods methods)
    {
        string words = methods.Words.Count == 1
            ? $"the log's method word {methods.Words[0]} is not known"
            : $"the log's method words {Say.List(methods.Words)} are not known";
        return methods.WithWord == 0 ? "no method is given"
            : methods.WithoutWord == 0 ? words
            : $"{words}; {methods.WithoutWord} {(methods.WithoutWord == 1 ? "has" : "have")} no method";
    }

    private static string Fact(Evidence evidence, Watering watering)
        => $"{Say.Time(watering.Start.ToInstant(), evidence.Zone)}: {watering.Source}.";
}
