using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>When leaves were wet by the film model, and what other ways to tell say of the same hours.</summary>
public sealed class WetnessCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "wetness";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("When were leaves wet?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["wetnessOfLeaves", "leafTemperature"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity", "leafWetness"], Records = [RecordKind.Waterings], RestsOnLeaves = true };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["leafBasis"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        if (review.WetnessOpinions.IsEmpty || review.Hours.All(h => h.Wet is null))
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("wetPeriods", Phrase.Of("It takes air temperature and humidity."))}"));
        }

        HtmlBuilder body = new();
        Calendar(body, review);
        body.Line($"<details class=\"screen\"><summary>What each way to tell said</summary>");
        Opinions(body, review.WetnessOpinions);
        body.Line($"</details>");
        Scores(body, review.WetnessOpinions);
        string dew = review.Waterings is null ? Phrase.Of(" Nothing tells of waterings: the film model's hours are those of dew alone.") : "";
        return new CellContent(Sentence(review, context.Facts), body.ToHtml(), Phrase.Of($"Modelled, not measured, unless “How was it worked out?” names a wetness sensor that rules. An hour is wet when leaves are for at least half of it, and unsure where the opinions that count part.{dew}"));
    }

    private static string Sentence(Review review, WeekFacts facts)
    {
        int unsure = review.Hours.Count(h => h.WetUnsure), unknown = review.Hours.Count(h => h.Wet is null);
        string wet = facts.WetHours == 0 ? Phrase.Of("By the film model leaves stayed dry") : Phrase.Of($"By the film model leaves were wet in {Words.Count(facts.WetHours, "hour", "hours")}");
        string parted = unsure == 0 ? Phrase.Of("; the other ways to tell agree.") : Phrase.Of($"; in {Words.Count(unsure, "hour", "hours")} other ways to tell say otherwise, which is marked; the risk hours follow the film model.");
        return wet + parted + (unknown == 0 ? "" : Phrase.Of($" In {Words.Count(unknown, "hour", "hours")} it is not known."));
    }

    private static void Calendar(HtmlBuilder body, Review review)
    {
        CalendarGrid grid = CalendarGrid.Of(review.Hours);
        body.Line($"<div class=\"scroll screen\" role=\"region\" aria-label=\"Wet leaves by day and hour, scrolls sideways\" tabindex=\"0\">");
        body.Line($"<table class=\"calendar wetness\"><caption>Wet leaves by day and hour (local time)</caption>");
        body.Add($"<thead><tr><th scope=\"col\">Day</th>");
        foreach (CalendarColumn column in grid.Columns)
        {
            body.Add($"<th scope=\"col\"{(column.Hour % 6 == 0 && column.Turn == 0 ? Html.Empty : MinorHour)}>{column.Label}</th>");
        }

        body.Line($"</tr></thead><tbody>");
        foreach (CalendarDay day in grid.Days)
        {
            body.Add($"<tr><th scope=\"row\">{LocalTimes.WeekDayAndNumber(day.Date)}<span class=\"month\"> {LocalTimes.Month(day.Date)}</span></th>");
            foreach (CalendarColumn column in grid.Columns)
            {
                body.Add($"{(day.Hours.TryGetValue(column, out ReviewHour? hour) ? Cell(hour) : NoHour)}");
            }

            body.Line($"</tr>");
        }

        body.Line($"</tbody></table></div>");
        body.Line($"<ul class=\"legend screen\" aria-label=\"Marks of the wet hours\"><li><span class=\"key wet1\" aria-hidden=\"true\">W</span> wet, all agree</li><li><span class=\"key wet2\" aria-hidden=\"true\">w?</span> wet by the film model, others part</li><li><span class=\"key wet0u\" aria-hidden=\"true\">?</span> dry by the film model, others part</li><li><span class=\"key r0\" aria-hidden=\"true\"></span> dry, all agree</li><li><span class=\"key ru\" aria-hidden=\"true\">–</span> not known</li></ul>");
    }

    private static readonly Html MinorHour = HtmlBuilder.Of($" class=\"minor\"");

    private static readonly Html NoHour = HtmlBuilder.Of($"<td class=\"none\"><span aria-hidden=\"true\">–</span><span class=\"vh\">no such hour</span></td>");

    private static Html Cell(ReviewHour hour)
    {
        (string style, string mark, string words) = (hour.Wet, hour.WetUnsure) switch
        {
            (null, _) => ("ru", "–", Phrase.Of("not known")),
            (true, false) => ("wet1", "W", Phrase.Of("wet")),
            (true, true) => ("wet2", "w?", Phrase.Of("wet, unsure")),
            (false, true) => ("wet0u", "?", Phrase.Of("dry, unsure")),
            _ => ("r0", "", Phrase.Of("dry")),
        };
        string share = hour.WetOpinionShare is { } known ? Phrase.Of($" ({Words.Share(known)} of the opinions say wet)") : "";
        return HtmlBuilder.Of($"<td class=\"{style}{(hour.Night ? " n" : "")}\" title=\"{LocalTimes.Moment(hour.Start)}: {words}{share}\"><span aria-hidden=\"true\">{mark}</span><span class=\"vh\">{words}</span></td>");
    }

    private static void Opinions(HtmlBuilder body, ImmutableArray<WetnessOpinion> opinions)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Opinions on wet leaves\" tabindex=\"0\"><table class=\"data\"><caption>Ways to tell wet leaves, and what they said of this period</caption><thead><tr><th scope=\"col\">Way</th><th scope=\"col\">Wet hours</th><th scope=\"col\">As the film model</th><th scope=\"col\">What to know of it</th></tr></thead><tbody>");
        foreach (WetnessOpinion opinion in opinions)
        {
            string agrees = opinion.Key == "film" ? "" : Phrase.Of($"{opinion.AgreesHours} of {opinion.KnownHours} h");
            body.Line($"<tr><th scope=\"row\">{Words.Capital(Phrase.Of(opinion.Name))}{(opinion.Counts ? "" : Phrase.Of(" (does not count)"))}</th><td>{opinion.WetHours}</td><td>{agrees}</td><td class=\"words\">{Phrase.Of(opinion.Caution)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static void Scores(HtmlBuilder body, ImmutableArray<WetnessOpinion> opinions)
    {
        if (opinions.All(o => o.Score is null))
        {
            return;
        }

        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Opinions against the wetness sensor\" tabindex=\"0\"><table class=\"data\"><caption>Against the leaf-wetness sensor (wet from half of its scale on), this period and the days before it that are loaded</caption><thead><tr><th scope=\"col\">Way</th><th scope=\"col\">Both wet h</th><th scope=\"col\">Missed h</th><th scope=\"col\">False alarm h</th><th scope=\"col\">Both dry h</th><th scope=\"col\">Too many hours a day</th></tr></thead><tbody>");
        foreach (WetnessOpinion opinion in opinions)
        {
            if (opinion.Score is { } s)
            {
                string range = s is { BiasLow: { } low, BiasHigh: { } high } ? Phrase.Of($" ({DisplayUnits.Number(low, 1)} to {DisplayUnits.Number(high, 1)})") : "";
                body.Line($"<tr><th scope=\"row\">{Words.Capital(Phrase.Of(opinion.Name))}</th><td>{DisplayUnits.Number(s.Hits, 1)}</td><td>{DisplayUnits.Number(s.Misses, 1)}</td><td>{DisplayUnits.Number(s.FalseAlarms, 1)}</td><td>{DisplayUnits.Number(s.CorrectDry, 1)}</td><td>{DisplayUnits.Number(s.BiasHoursADay, 1)}{range}</td></tr>");
            }
        }

        body.Line($"</tbody></table></div>");
    }
}
