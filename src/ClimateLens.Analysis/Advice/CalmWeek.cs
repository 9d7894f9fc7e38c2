using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>Nothing to say is worth saying, once.</summary>
internal static class CalmWeek
{
    public static Candidate Of(Evidence evidence) => new(
        "calm",
        0,
        Phrase.Of($"Nothing stood out: no risk hours{UpTo(evidence)} in {Say.Count(evidence.Coverage.HoursWithData, "hour")} with data, no night with 6 or more humid hours{OfNights(evidence)}, no late watering over the leaves that the data tell of."),
        Phrase.Of("Carry on as you do."),
        Phrase.Of("A calm week is no promise for the next one."),
        [Phrase.Of($"{evidence.Coverage.HoursWithData} of {Say.Count(evidence.Coverage.ExpectedHours, "hour")} have data.")]);

    private static string OfNights(Evidence evidence)
        => evidence.JudgedNights.Count() is int judged && judged < evidence.Nights.Length ? Phrase.Of($" among the {judged} with enough data") : "";

    /// <summary>How many there may be all the same, given the sensors' errors.</summary>
    private static string UpTo(Evidence evidence)
        => evidence.Risk.Total is { High: > 0 } total ? Phrase.Of($" (up to {Say.Number(total.High)} if the sensors are off)") : "";
}
