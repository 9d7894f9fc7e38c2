using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>The difference of relative humidity, hour by day.</summary>
public sealed class DifferenceMapCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "differenceMap";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("At which hours did they differ?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ImmutableArray<double?> differences = context.Report.HourlyHumidityPct;
        if (differences.All(d => d is null))
        {
            return CellContent.Unanswered(Phrase.Of("Not known: no hour has humidity of both sides."));
        }

        Dictionary<ReviewHour, double?> of = context.First.Hours.Select((h, i) => (h, differences[i])).ToDictionary(p => p.h, p => p.Item2, ReferenceEqualityComparer.Instance as IEqualityComparer<ReviewHour>);
        CalendarGrid grid = CalendarGrid.Of(context.First.Hours);
        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Difference of humidity by day and hour, scrolls sideways\" tabindex=\"0\"><table class=\"calendar differences\"><caption>Relative humidity, first less second, in points (local time of the first)</caption><thead><tr><th scope=\"col\">Day</th>");
        foreach (CalendarColumn column in grid.Columns)
        {
            body.Add($"<th scope=\"col\">{column.Label}</th>");
        }

        body.Line($"</tr></thead><tbody>");
        foreach (CalendarDay day in grid.Days)
        {
            body.Add($"<tr><th scope=\"row\">{LocalTimes.Day(day.Date)}</th>");
            foreach (CalendarColumn column in grid.Columns)
            {
                double? difference = day.Hours.TryGetValue(column, out ReviewHour? hour) ? of[hour] : null;
                body.Add($"<td class=\"{Class(difference)}\">{(difference is { } d ? CompareWords.Signed(d, 0) : "")}</td>");
            }

            body.Line($"</tr>");
        }

        body.Line($"</tbody></table></div>");
        body.Line($"<p class=\"note\">Colours change at 2, 6 and 12 points: blue where the first was drier, orange where it was damper.</p>");
        var byHour = context.First.Hours.Select((h, i) => (h.Start.Hour, D: differences[i])).Where(p => p.D is not null).GroupBy(p => p.Hour).Select(g => (Hour: g.Key, Mean: g.Average(p => p.D!.Value))).ToArray();
        var most = byHour.MaxBy(h => Math.Abs(h.Mean));
        return new CellContent(
            Phrase.Of($"They differed most around {most.Hour:00}:00: {context.FirstName} was {DisplayUnits.Number(Math.Abs(most.Mean), 1)} points {(most.Mean > 0 ? Phrase.Of("damper") : Phrase.Of("drier"))} on the mean of the days."), body.ToHtml());
    }

    private static string Class(double? difference) => difference switch
    {
        null => "dn",
        <= -12 => "d-3",
        <= -6 => "d-2",
        <= -2 => "d-1",
        < 2 => "d0",
        < 6 => "d1",
        < 12 => "d2",
        _ => "d3",
    };
}
