using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// Nights with six or more humid hours, in a row or not. Limit and source: <see cref="NightHours.HumidPct"/>. The advice to heat and vent at dusk and
/// before sunrise is that of extension services (University of Massachusetts) and common practice.
/// </summary>
internal static class LongHumidNights
{
    public const string Id = "longHumidNights";

    private const int LongHours = 6;

    public static Candidate? Of(Evidence evidence)
    {
        NightHours[] nights = [.. evidence.JudgedNights.Where(n => n.Humid >= LongHours)];
        if (nights.Length == 0)
        {
            return null;
        }

        int humid = nights.Sum(n => n.Humid), risk = nights.Sum(n => n.Risk);
        string text = Phrase.Of($"{nights.Length} of {Say.Count(evidence.JudgedNights.Count(), "night")} had 6 or more humid hours: {Say.Count(humid, "hour")} at or above 85 % humidity or with leaves near the dew point, {Say.Count(risk, "risk hour")} among them.");
        Estimate? avoided = Avoidable.By(evidence, Change.HeatAndVentBeforeSunrise);
        return new Candidate(
            Id,
            avoided is null ? Math.Max(risk, humid / 2.0) : Math.Max(0, avoided.Value),
            text,
            Phrase.Of("Let moist air out and dry air in: vent a little while heating gently at dusk and again before sunrise, and keep air moving between the plants."),
            Phrase.Of($"Limit of 85 % and 6 hours: Michigan State University Extension advice on grey mould. Heating and venting at dusk and before sunrise: extension advice and common practice; what it would save here {(avoided is null ? Phrase.Of("is not known") : Phrase.Of($"is {Say.Number(avoided.Value)} risk hours ({Say.Number(avoided.Low)} to {Say.Number(avoided.High)}) for the hours before sunrise"))}."),
            [.. evidence.Nights.Where(n => !n.IsJudged || n.Humid >= LongHours).Select(n => Fact(evidence, n))]);
    }

    private static string Fact(Evidence evidence, NightHours night)
    {
        if (!night.IsJudged)
        {
            return Phrase.Of($"Night of {Say.Day(night.Evening)}: {night.Hours} of {Say.Count(night.Length, "hour")} with data, too few to judge.");
        }

        bool before = night.Evening < evidence.Period.Input.Period.Start.InZone(evidence.Zone).Date;
        string where = before ? Phrase.Of(" in this period") : "";
        return Phrase.Of($"Night of {Say.Day(night.Evening)}: {night.Humid} of {Say.Count(night.Hours, "hour")} humid, up to {Say.Number(night.HighestPct, 0)} %, {Say.Count(night.Risk, "risk hour")}{where}.");
    }
}
