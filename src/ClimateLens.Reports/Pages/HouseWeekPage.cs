using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>A rendered page, and the names of the cells that threw.</summary>
internal sealed record RenderedPage(string Html, ImmutableArray<string> FailedCells);

/// <summary>A page of one house period: the prose and cells of a notebook in order, each cell in its own section.</summary>
internal static class HouseWeekPage
{
    /// <summary>The page of a notebook.</summary>
    /// <param name="review">The review.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="files">Names of the data files beside the page.</param>
    /// <param name="notebook">The notebook.</param>
    /// <param name="all">All notebooks of the house's week, for the links between their pages.</param>
    public static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, Notebook notebook, IReadOnlyList<Notebook> all)
        => Render(review, units, files, PagePart.Of(notebook), notebook, all);

    /// <summary>A page of cells.</summary>
    public static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, IReadOnlyList<IReportCell> cells)
        => Render(review, units, files, [.. cells.Select(PagePart.Of)], null, []);

    /// <summary>Name of a notebook's page in the folder of its house and period.</summary>
    public static string FileName(Notebook notebook) => notebook.Name == Main ? "index.html" : $"{notebook.Name}.html";

    /// <summary>The notebook whose page is the folder's own.</summary>
    public const string Main = "week";

    private static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, IReadOnlyList<PagePart> parts, Notebook? notebook, IReadOnlyList<Notebook> all)
    {
        CellContext context = CellContext.Of(review, units, files);
        Lazy<JsonDocument> values = new(() => JsonDocument.Parse(ReviewJson.Write(review)));
        var failed = ImmutableArray.CreateBuilder<string>();
        List<Html> sections = [];
        foreach (PagePart part in parts)
        {
            if (part.Cell is not { } cell)
            {
                sections.Add(HtmlBuilder.Of($"<div class=\"prose\">{ProseMarkup.Of(part.Prose, values)}</div>"));
                continue;
            }

            Html section = CellSection.Render(cell, context with { Values = part.Values }, out bool threw);
            if (threw)
            {
                failed.Add(cell.Name);
            }

            if (!section.IsEmpty)
            {
                sections.Add(section);
            }
        }

        HtmlBuilder main = new();
        if (failed.Count > 0)
        {
            main.Line($"<p class=\"failed\" role=\"note\">{Words.Count(failed.Count, "part", "parts")} of this page could not be made; the rest stands.</p>");
        }

        foreach (Html section in sections)
        {
            main.Line(section);
        }

        string of = notebook is null or { Name: Main } ? "" : $": {notebook.Title}";
        string title = $"{review.House.Name}, {PeriodWords.Name(review.Period)}{of}";
        string mark = PageMark.Of(review.Provenance.InputHash, units.System);
        string html = PageShell.Render(title, "../../", mark, charts: true, review.House.Invented, Header(review, of, notebook, all), main.ToHtml());
        return new RenderedPage(html, failed.ToImmutable());
    }

    private static Html Header(Review review, string of, Notebook? notebook, IReadOnlyList<Notebook> all)
    {
        string crop = review.House.Crop is { Length: > 0 } species ? $" · {species}" : "";
        HtmlBuilder header = new();
        header.Add($"<nav aria-label=\"Site\"><a href=\"../../index.html\">All houses and weeks</a>");
        foreach (Notebook other in all.Where(n => n.Name != notebook?.Name))
        {
            header.Add($" · <a href=\"{FileName(other)}\">{(other.Name == Main ? "The week" : other.Title)}</a>");
        }

        header.Line($"</nav>");
        header.Line($"<h1>{Html.Name(review.House.Name)}, {PeriodWords.Name(review.Period)}{of}</h1>");
        header.Line($"<p class=\"under\">{PeriodWords.Dates(review.Period)} · {Html.Name(review.House.Nursery)}{crop}</p>");
        return header.ToHtml();
    }
}
