using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;
using NodaTime;

namespace ClimateLens.Reports.Cells;

/// <summary>The risk calendar: one row a local day, one column a clock hour.</summary>
public sealed class RiskCalendarCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "calendar";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("When was the risk?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["riskHours", "rangeOfRiskHours"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity"], RestsOnLeaves = true };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["riskHours"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Figure | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        if (review.Hours.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("The period has no hours."));
        }

        CalendarGrid grid = CalendarGrid.Of(review.Hours);
        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Risk calendar, scrolls sideways\" tabindex=\"0\">");
        body.Line($"<table class=\"calendar\"><caption>Risk by day and hour (local time)</caption>");
        bool unknown = context.Facts.UnknownHours > 0;
        Head(body, grid, unknown);
        Body(body, grid, unknown, HoursWithWaterings(review));
        body.Line($"</table></div>");
        body.Line(CalendarLegend.Of(grid, review));
        return new CellContent(Sentence(review, grid, context.Facts), body.ToHtml(), Method);
    }

    // Narrow screens name every sixth hour only; the others stay for screen readers.
    private static readonly Html MinorHour = HtmlBuilder.Of($" class=\"minor\"");

    private static string Method =>
        Phrase.Of("A risk hour is an hour in which leaves were wet or close to the dew point, at a temperature at which leaf disease can start. "
        + "How sure an hour is comes from repeating the sum with other errors of the sensors and of what is assumed, within their stated ranges.");

    private static string Sentence(Review review, CalendarGrid grid, WeekFacts facts)
    {
        string unknown = facts.UnknownHours == 0 ? "" : Phrase.Of($" {Words.Capital(Words.Count(facts.UnknownHours, "hour is", "hours are"))} not known.");
        if (facts.UnknownHours == review.Hours.Length)
        {
            return Phrase.Of("Of no hour is the risk known.");
        }

        int all = review.Hours.Count(h => h.Risk == true);
        if (all == 0)
        {
            return Phrase.Of($"No hour of those with data was more likely than not a risk hour." + $"{unknown}");
        }

        int night = review.Hours.Count(h => h is { Risk: true, Night: true });
        string atNight = night == all ? Phrase.Of("all of them") : Phrase.Of($"{night} of them");
        CalendarDay worst = grid.Days.MaxBy(d => d.Hours.Values.Count(h => h.Risk == true))!;
        int[] byDay = [.. grid.Days.Select(d => d.Hours.Values.Count(h => h.Risk == true)).OrderDescending()];
        if (byDay[0] < 3 || (byDay.Length > 1 && byDay[0] == byDay[1]))
        {
            return Phrase.Of($"{Words.Count(all, "hour was", "hours were")} more likely than not risk hours, {atNight} at night.{unknown}");
        }

        return Phrase.Of($"{Words.Count(all, "hour was", "hours were")} more likely than not risk hours, {atNight} at night; "
            + $"most fell on {LocalTimes.Day(worst.Date)} ({worst.Hours.Values.Count(h => h.Risk == true)}).{unknown}");
    }

    private static void Head(HtmlBuilder body, CalendarGrid grid, bool unknown)
    {
        body.Add($"<thead><tr><th scope=\"col\">Day</th>");
        foreach (CalendarColumn column in grid.Columns)
        {
            body.Add($"<th scope=\"col\"{(column.Hour % 6 == 0 && column.Turn == 0 ? Html.Empty : MinorHour)}>{column.Label}</th>");
        }

        body.Add($"<th scope=\"col\" class=\"sum\">Risk hours</th>");
        if (unknown)
        {
            body.Add($"<th scope=\"col\" class=\"sum\">Not known</th>");
        }

        body.Line($"</tr></thead>");
    }

    private static void Body(HtmlBuilder body, CalendarGrid grid, bool unknown, ILookup<Instant, Watering> waterings)
    {
        body.Line($"<tbody>");
        foreach (CalendarDay day in grid.Days)
        {
            body.Add($"<tr><th scope=\"row\">{LocalTimes.WeekDayAndNumber(day.Date)}<span class=\"month\"> {LocalTimes.Month(day.Date)}</span></th>");
            foreach (CalendarColumn column in grid.Columns)
            {
                body.Add($"{(day.Hours.TryGetValue(column, out ReviewHour? hour) ? Cell(hour, waterings) : NoSuchHour(column))}");
            }

            body.Line($"{DayTotal(day, unknown)}</tr>");
        }

        body.Line($"</tbody>");
    }

    private static Html Cell(ReviewHour hour, ILookup<Instant, Watering> waterings)
    {
        RiskLevel level = RiskLevels.Of(hour);
        ImmutableArray<Watering> here = [.. waterings[hour.Start.ToInstant()]];
        string night = $"{(hour.Night ? " n" : "")}{(hour.Wet == true ? " w" : "")}";
        string probability = level == RiskLevel.Unknown || hour.RiskProbability is null ? "" : $" ({Share(hour.RiskProbability.Value)})";
        string words = $"{RiskLevels.Words(level)}{probability}{(hour.Night ? Phrase.Of(", night") : "")}{WateringWords(here)}{(hour.Wet == true ? Phrase.Of(", leaves wet") : "")}";
        return HtmlBuilder.Of(
            $"<td class=\"{RiskLevels.Class(level)}{night}\" title=\"{LocalTimes.Moment(hour.Start)}: {words}\"><span aria-hidden=\"true\">{RiskLevels.Mark(level)}{CalendarLegend.Drops(here)}</span><span class=\"vh\">{words}</span></td>");
    }

    /// <summary>Rounded down, so that a share never says more than the class beside it.</summary>
    private static string Share(double probability) => probability is > 0 and < 0.01 ? "<\u20091\u00A0%" : $"{DisplayUnits.Number(Math.Floor(100 * probability), 0)}\u00A0%";

    private static Html NoSuchHour(CalendarColumn column)
    {
        string words = column.Turn == 0 ? Phrase.Of("no such hour: the clock went forward") : Phrase.Of("only on the day the clock goes back");
        return HtmlBuilder.Of($"<td class=\"none\" title=\"{words}\"><span aria-hidden=\"true\">–</span><span class=\"vh\">no such hour</span></td>");
    }

    private static Html DayTotal(CalendarDay day, bool withUnknown)
    {
        int unknown = day.Hours.Values.Count(h => RiskLevels.Of(h) == RiskLevel.Unknown);
        int risk = day.Hours.Values.Count(h => h.Risk == true);
        Html known = HtmlBuilder.Of($"<td class=\"sum\">{(unknown == day.Hours.Count ? "–" : Words.Whole(risk))}</td>");
        return withUnknown ? HtmlBuilder.Of($"{known}<td class=\"sum\">{unknown}</td>") : known;
    }

    private static string WateringWords(ImmutableArray<Watering> waterings) => waterings switch
    {
        [] => "",
        _ when waterings.Any(w => w is { WetsLeaves: true, AfterCutOff: true }) => Phrase.Of(", watered late over the leaves"),
        _ when waterings.Any(w => w.WetsLeaves == true) => Phrase.Of(", watered over the leaves"),
        _ when waterings.All(w => w.WetsLeaves == false) => Phrase.Of(", watered, leaves dry"),
        _ => Phrase.Of(", watered"),
    };

    private static ILookup<Instant, Watering> HoursWithWaterings(Review review)
    {
        ImmutableArray<Instant> starts = [.. review.Hours.Select(h => h.Start.ToInstant())];
        return (review.Waterings ?? []).ToLookup(w =>
        {
            int at = starts.BinarySearch(w.Start.ToInstant());
            return starts[at >= 0 ? at : Math.Max(0, ~at - 1)];
        });
    }
}
