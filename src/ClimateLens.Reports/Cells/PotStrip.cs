using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;
using NodaTime;

namespace ClimateLens.Reports.Cells;

/// <summary>The levels of each bench by day, in the order of the day, with waterings between them and jumps marked. Every level is written as a number: colour only helps.</summary>
internal static class PotStrip
{
    public static void Add(HtmlBuilder body, PotReport pots)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Moisture levels by bench and day\" tabindex=\"0\"><table class=\"data pots\"><caption>Moisture level by bench and day: 1 dry to 5 saturated, the mean of the pots of each visit</caption><thead><tr><th scope=\"col\">Bench</th>");
        foreach (PotDayReport day in pots.Days)
        {
            body.Add($"<th scope=\"col\">{LocalTimes.WeekDayAndNumber(day.Date)}</th>");
        }

        body.Line($"<th scope=\"col\">Swing index</th></tr></thead><tbody>");
        foreach (PotBenchReport bench in pots.Benches)
        {
            body.Line($"<tr><th scope=\"row\">{Bench(bench.Bench)}</th>");
            foreach (PotDayReport day in pots.Days)
            {
                body.Line($"<td>{Day(pots, bench, day.Date)}</td>");
            }

            body.Line($"<td>{(bench.DaysWithTwo == 0 ? DisplayUnits.NotKnown : DisplayUnits.Number(bench.SwingIndex, 1))}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        body.Line($"<ul class=\"legend\"><li><span class=\"lv d\">1.5</span> below the band</li><li><span class=\"lv\">3</span> within it</li><li><span class=\"lv s\">4.5</span> above it</li><li>{Drop} a watering</li><li><span class=\"jump\">!</span> two levels or more from the day before</li></ul>");
    }

    /// <summary>The name of a bench in a table.</summary>
    public static string Bench(string bench) => bench.Length == 0 ? Phrase.Of("whole house") : bench;

    private static Html Drop => HtmlBuilder.Of($"<span class=\"water\"><span aria-hidden=\"true\">\u25BC</span><span class=\"vh\">watered</span></span>");

    private static Html Day(PotReport pots, PotBenchReport bench, LocalDate day)
    {
        HtmlBuilder cell = new();
        var marks = bench.Visits.Where(v => v.At.Date == day).Select(v => (At: v.At, Mark: Visit(pots, bench, v)))
            .Concat(bench.Waterings.Where(w => w.Date == day).Select(w => (At: w, Mark: Drop)))
            .OrderBy(m => m.At.ToInstant());
        foreach ((OffsetDateTime At, Html Mark) mark in marks)
        {
            cell.Add($"{mark.Mark} ");
        }

        return cell.ToHtml().IsEmpty ? HtmlBuilder.Of($"\u2013<span class=\"vh\"> not checked</span>") : cell.ToHtml();
    }

    private static Html Visit(PotReport pots, PotBenchReport bench, PotVisit visit)
    {
        string where = visit.Level < pots.Band?.Low ? " d" : visit.Level > pots.Band?.High ? " s" : "";
        bool jump = pots.Jumps.Any(j => j.Bench == bench.Bench && j.To == visit.At);
        Html mark = jump ? HtmlBuilder.Of($"<span class=\"jump\" aria-hidden=\"true\">!</span><span class=\"vh\"> a jump</span>") : Html.Empty;
        return HtmlBuilder.Of($"<span class=\"lv{where}\" title=\"{LocalTimes.Clock(visit.At)}\">{DisplayUnits.Number(visit.Level, 1)}{mark}</span>");
    }
}
