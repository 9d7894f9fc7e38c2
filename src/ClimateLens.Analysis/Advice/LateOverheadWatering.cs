using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using NodaTime;

namespace ClimateLens.Analysis.Advice;

/// <summary>
/// Waterings over the leaves that ended after the cut-off. Risk hours of the night after are counted beside them; that they came
/// together says nothing of cause.
/// </summary>
internal static class LateOverheadWatering
{
    public const string Id = "lateOverheadWatering";

    public static Candidate? Of(Evidence evidence)
    {
        Watering[] wetting = [.. evidence.Waterings.Where(w => w.WetsLeaves == true)];
        Watering[] late = [.. wetting.Where(w => w.AfterCutOff == true)];
        if (late.Length == 0)
        {
            return null;
        }

        var nights = late.GroupBy(w => w.Start.Date).Select(g => Night(evidence, [.. g])).ToArray();
        int risk = nights.Sum(n => n.Risk), humid = nights.Sum(n => n.Humid);
        string days = Say.List([.. nights.Select(n => Say.Day(n.Day))]);
        double drying = evidence.Period.Input.House.Rules.DryingHours;
        string came = nights.Length == 1 ? "The night after came" : "The nights after, together, came";
        return new Candidate(
            Id,
            Math.Max(risk, 1 + humid / 2.0),
            $"{late.Length} of {Say.Count(wetting.Length, "watering")} over the leaves ended after the cut-off, less than {Say.Number(drying)} hours before sunset ({days}). {came} with {Say.Count(risk, "risk hour")}.",
            $"Finish watering over the leaves at least {Say.Number(drying)} hours before sunset, or move it to the morning. Where the crop allows, water below the leaves.",
            $"The {Say.Number(drying)} hours of drying are {DryingSource(evidence)}; in dull, still and humid air leaves need longer. Risk hours that came with late watering (leaves wet by the film model, or near the dew point) need not all come from it: a humid evening would bring both.",
            [.. nights.Select(n => n.Fact)]);
    }

    private static string DryingSource(Evidence evidence)
        => evidence.Period.Input.House.Rules.SetByUser.Contains("dryingHours") ? "set in the nursery file" : "common practice without a published source";

    private static (LocalDate Day, int Risk, int Humid, string Fact) Night(Evidence evidence, Watering[] late)
    {
        DateTimeZone zone = evidence.Zone;
        Watering last = late.MaxBy(Finish)!;
        Instant end = Finish(last);
        Instant sunrise = evidence.Period.Sun.NextSunrise(end) ?? end + Duration.FromHours(24);
        int risk = evidence.Risk.Count(end, sunrise);
        LocalDate day = last.Start.Date;
        int humid = NightHours.OfEvening(evidence.Period, evidence.Risk, day).Humid;
        string which = late.Length == 1 ? "a watering" : $"the last of {late.Length} waterings";
        string cutOff = last.CutOff is OffsetDateTime latest ? $", after the cut-off of {Say.Clock(latest.ToInstant(), zone)}" : "";
        string sunset = last.Sunset is OffsetDateTime dusk ? $" (sunset {Say.Clock(dusk.ToInstant(), zone)})" : "";
        string until = sunrise <= evidence.Period.Input.Period.End ? "before the next sunrise" : "before the end of the period, which cuts the night";
        string fact = $"{Say.Day(day)}: {which} {(last.End is null ? "began" : "ended")} at {Say.Clock(end, zone)}{cutOff}{sunset}; it came with {Say.Count(risk, "risk hour")} {until}.";
        return (day, risk, humid, fact);
    }

    private static Instant Finish(Watering watering) => (watering.End ?? watering.Start).ToInstant();
}
