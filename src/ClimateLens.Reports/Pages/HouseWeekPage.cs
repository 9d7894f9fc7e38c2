using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>A rendered page, and the names of the cells that threw.</summary>
internal sealed record RenderedPage(string Html, ImmutableArray<string> FailedCells);

/// <summary>The page of one house period: its cells in order, each in its own section.</summary>
internal static class HouseWeekPage
{
    public static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, IReadOnlyList<IReportCell> cells)
    {
        CellContext context = CellContext.Of(review, units, files);
        var failed = ImmutableArray.CreateBuilder<string>();
        List<(IReportCell Cell, Html Section)> sections = [];
        foreach (IReportCell cell in cells)
        {
            Html section = CellSection.Render(cell, context, out bool threw);
            if (threw)
            {
                failed.Add(cell.Name);
            }

            if (!section.IsEmpty)
            {
                sections.Add((cell, section));
            }
        }

        HtmlBuilder main = new();
        if (failed.Count > 0)
        {
            main.Line($"<p class=\"failed\" role=\"note\">{Words.Count(failed.Count, "part", "parts")} of this page could not be made; the rest stands.</p>");
        }

        foreach ((_, Html section) in sections)
        {
            main.Line(section);
        }

        string title = $"{review.House.Name}, {PeriodWords.Name(review.Period)}";
        string mark = PageMark.Of(review.Provenance.InputHash, units.System);
        string html = PageShell.Render(title, "../../", mark, charts: true, review.House.Invented, Header(review), main.ToHtml());
        return new RenderedPage(html, failed.ToImmutable());
    }

    private static Html Header(Review review)
    {
        string crop = review.House.Crop is { Length: > 0 } species ? $" · {species}" : "";
        HtmlBuilder header = new();
        header.Line($"<nav aria-label=\"Site\"><a href=\"../../index.html\">All houses and weeks</a></nav>");
        header.Line($"<h1>{Html.Name(review.House.Name)}, {PeriodWords.Name(review.Period)}</h1>");
        header.Line($"<p class=\"under\">{PeriodWords.Dates(review.Period)} · {Html.Name(review.House.Nursery)}{crop}</p>");
        return header.ToHtml();
    }
}
