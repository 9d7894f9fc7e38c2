using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;
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
        string came = nights.Length == 1 ? Phrase.Of("The night after came") : Phrase.Of("The nights after, together, came");
        Estimate? avoided = Avoidable.By(evidence, Change.WaterBeforeCutOff);
        string saved = avoided is null ? ""
            : Avoidable.IsWorthwhile(avoided) ? " " + Avoidable.Sentence(Phrase.Of("Finished by the cut-off"), evidence, avoided)
            : Phrase.Of($" Finishing by the cut-off alone would have changed little (about {Say.Number(avoided.Value)} risk hours fewer, {Span(avoided)}).");
        return new Candidate(
            Id,
            avoided?.Value ?? Math.Max(risk, 1 + (humid / 2.0)),
            Phrase.Of($"{late.Length} of {Say.Count(wetting.Length, "watering")} over the leaves ended after the cut-off{Meaning(evidence, late)} ({days}). {came} with {Say.Count(risk, "risk hour")}.{saved}"),
            Phrase.Of($"{Earlier(evidence, late)} Where the crop allows, water below the leaves."),
            Phrase.Of($"{Basis(evidence, late)} Risk hours that came with late watering (leaves wet by the film model, or near the dew point) need not all come from it: a humid evening would bring both.{(avoided is null ? "" : $" {Avoidable.Caution}")}"),
            [.. nights.Select(n => n.Fact)])
        {
            Avoided = Avoidable.IsWorthwhile(avoided) ? avoided : null,
        };
    }

    private static string Span(Estimate avoided) => avoided.Low < 0
        ? Phrase.Of($"from {Say.Number(-avoided.Low)} more to {Say.Number(avoided.High)} fewer")
        : Phrase.Of($"{Say.Number(avoided.Low)} to {Say.Number(avoided.High)}");

    private static string Meaning(Evidence evidence, Watering[] late)
        => late.All(w => w.CutOffByFilm == true) ? Phrase.Of(", too late for leaves to be dry an hour before sunset")
            : late.All(w => w.CutOffByFilm == false) ? Phrase.Of($", less than {Say.Number(Drying(evidence))} hours before sunset")
            : "";

    private static string Earlier(Evidence evidence, Watering[] late)
    {
        OffsetDateTime[] latest = [.. late.Where(w => w.CutOffByFilm == true).Select(w => w.CutOff).OfType<OffsetDateTime>()];
        string dull = late.Any(w => w is { CutOffByFilm: true, CutOff: null }) ? Phrase.Of(" On days as dull as those named below keep water off the leaves altogether.") : "";
        return latest.Length > 0 ? By(latest.MinBy(t => t.TimeOfDay), latest.MaxBy(t => t.TimeOfDay), evidence.Zone) + dull
            : dull.Length > 0 ? dull.TrimStart()
            : Phrase.Of($"Finish watering over the leaves at least {Say.Number(Drying(evidence))} hours before sunset, or move it to the morning.");
    }

    /// <summary>The latest finish; where it lies before noon, the morning is no way out.</summary>
    private static string By(OffsetDateTime earliest, OffsetDateTime latest, DateTimeZone zone)
    {
        string from = Say.Clock(earliest.ToInstant(), zone), to = Say.Clock(latest.ToInstant(), zone);
        return earliest.Hour >= 12 ? Phrase.Of($"Finish watering over the leaves by {from} in weather like this week's, or move it to the morning.")
            : from == to ? Phrase.Of($"On days like those below finish watering over the leaves by {from}, or keep it off them.")
            : Phrase.Of($"On days like those below finish watering over the leaves by {from} to {to}, the duller the earlier, or keep it off them.");
    }

    private static string Basis(Evidence evidence, Watering[] late)
    {
        string film = late.Any(w => w.CutOffByFilm == true) ? Phrase.Of("The cut-off is by the film model with that day's own drying; such models miss by about an hour, and leaves deep in the crop dry later.") : "";
        string rule = late.Any(w => w.CutOffByFilm == false) ? Phrase.Of($"The {Say.Number(Drying(evidence))} hours of drying are {DryingSource(evidence)}; in dull, still and humid air leaves need longer.") : "";
        return $"{film} {rule}".Trim();
    }

    private static double Drying(Evidence evidence) => evidence.Period.Input.House.Rules.DryingHours;

    private static string DryingSource(Evidence evidence)
        => evidence.Period.Input.House.Rules.SetByUser.Contains("dryingHours") ? Phrase.Of("set in the nursery file") : Phrase.Of("common practice without a published source");

    private static (LocalDate Day, int Risk, int Humid, string Fact) Night(Evidence evidence, Watering[] late)
    {
        DateTimeZone zone = evidence.Zone;
        Watering last = late.MaxBy(Finish)!;
        Instant end = Finish(last);
        Instant sunrise = evidence.Period.Sun.NextSunrise(end) ?? end + Duration.FromHours(24);
        int risk = evidence.Risk.Count(end, sunrise);
        LocalDate day = last.Start.Date;
        int humid = NightHours.OfEvening(evidence.Period, evidence.Risk, day).Humid;
        string which = late.Length == 1 ? Phrase.Of("a watering") : Phrase.Of($"the last of {late.Length} waterings");
        string cutOff = last.CutOff is OffsetDateTime latest ? Phrase.Of($", after the cut-off of {Say.Clock(latest.ToInstant(), zone)}")
            : last.CutOffByFilm == true ? Phrase.Of(", on a day on which no finish let leaves dry")
            : "";
        string sunset = last.Sunset is OffsetDateTime dusk ? Phrase.Of($" (sunset {Say.Clock(dusk.ToInstant(), zone)})") : "";
        string until = sunrise <= evidence.Period.Input.Period.End ? Phrase.Of("before the next sunrise") : Phrase.Of("before the end of the period, which cuts the night");
        string fact = Phrase.Of($"{Say.Day(day)}: {which} {(last.End is null ? Phrase.Of("began") : Phrase.Of("ended"))} at {Say.Clock(end, zone)}{cutOff}{sunset}; it came with {Say.Count(risk, "risk hour")} {until}.");
        return (day, risk, humid, fact);
    }

    private static Instant Finish(Watering watering) => (watering.End ?? watering.Start).ToInstant();
}
