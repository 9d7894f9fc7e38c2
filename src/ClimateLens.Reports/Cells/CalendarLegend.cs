using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>The calendar's marks and what they mean; only those that the calendar can show.</summary>
internal static class CalendarLegend
{
    private static readonly Html Wet = Drop("drop wet", Html.Empty);
    private static readonly Html Late = Drop("drop late", HtmlBuilder.Of($"<path d=\"M5 5v3.6M5 10.4v1.4\"/>"));
    private static readonly Html Dry = Drop("drop dry", Html.Empty);

    /// <summary>The watering mark of an hour: late over late, wet over dry.</summary>
    public static Html Drops(ImmutableArray<Watering> waterings) => waterings switch
    {
        [] => Html.Empty,
        _ when waterings.Any(w => w is { WetsLeaves: true, AfterCutOff: true }) => Late,
        _ when waterings.Any(w => w.WetsLeaves == true) => Wet,
        _ => Dry,
    };

    public static Html Of(CalendarGrid grid, Review review)
    {
        HtmlBuilder list = new();
        list.Line($"<ul class=\"legend\" aria-label=\"Marks of the calendar\">");
        foreach (RiskLevel level in RiskLevels.All)
        {
            list.Line($"<li><span class=\"key {RiskLevels.Class(level)}\" aria-hidden=\"true\">{RiskLevels.Mark(level)}</span> {Explained(level)}</li>");
        }

        list.Line($"<li><span class=\"key r0 n\" aria-hidden=\"true\"></span> night</li>");
        if (review.Waterings is { Length: > 0 } waterings)
        {
            Waterings(list, waterings);
        }

        if (review.Hours.Any(h => h.Wet == true))
        {
            list.Line($"<li><span class=\"key r0 w\" aria-hidden=\"true\"></span> leaves wet for at least half of the hour</li>");
        }

        if (grid.Columns.Any(c => c.Turn > 0))
        {
            list.Line($"<li>b: the same clock hour again, after the clock was put back</li>");
        }

        if (grid.Days.Any(d => d.Hours.Count < grid.Columns.Count))
        {
            list.Line($"<li><span class=\"key none\" aria-hidden=\"true\">–</span> no such hour on that day</li>");
        }

        return list.Line($"</ul>").ToHtml();
    }

    private static void Waterings(HtmlBuilder list, ImmutableArray<Watering> waterings)
    {
        if (waterings.Any(w => w.WetsLeaves == true))
        {
            list.Line($"<li><span class=\"key\" aria-hidden=\"true\">{Late}</span> watered over the leaves, after the cut-off</li>");
            list.Line($"<li><span class=\"key\" aria-hidden=\"true\">{Wet}</span> watered over the leaves</li>");
        }

        if (waterings.Any(w => w.WetsLeaves != true))
        {
            list.Line($"<li><span class=\"key\" aria-hidden=\"true\">{Dry}</span> watered otherwise</li>");
        }
    }

    private static string Explained(RiskLevel level) => level switch
    {
        RiskLevel.None => Phrase.Of("unlikely (under 5 %)"),
        RiskLevel.Possible => Phrase.Of("possible (5 to 50 %)"),
        RiskLevel.Likely => Phrase.Of("likely (50 % and more)"),
        RiskLevel.NearlySure => Phrase.Of("nearly sure (95 % and more)"),
        _ => Phrase.Of("not known: no usable readings"),
    };

    private static Html Drop(string style, Html inside)
        => HtmlBuilder.Of($"<svg class=\"{style}\" viewBox=\"0 0 10 14\" width=\"10\" height=\"14\"><path d=\"M5 1C7 5 9 7 9 9.5a4 4 0 0 1-8 0C1 7 3 5 5 1Z\"/>{inside}</svg>");
}
