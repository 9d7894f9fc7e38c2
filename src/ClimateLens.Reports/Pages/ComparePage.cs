using System.Text.Json;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Comparing;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>The page that holds two reviews side by side.</summary>
internal static class ComparePage
{
    /// <summary>Renders a notebook of two reviews.</summary>
    public static RenderedPage Render(ComparisonReport report, Review first, Review second, DisplayUnits units, Notebook notebook)
    {
        CompareContext context = new(report, first, second, units);
        NotebookBody body = NotebookBody.Of(notebook.Parts, new(() => JsonDocument.Parse(CompareJson.Write(report))), part =>
        {
            ICompareCell cell = CompareCells.All.Single(c => c.Name == part.Cell);
            return new CellMaker(cell.Heading, cell.Files, () => CellFold.Plain(cell.Render(context), [.. cell.Files]));
        });
        HtmlBuilder main = new();
        body.AddTo(main);
        string title = Phrase.Of($"{context.FirstName} and {context.SecondName}, {PeriodWords.Name(first.Period)}");
        HtmlBuilder header = new();
        header.Line($"<nav aria-label=\"Site\"><a href=\"../../index.html\">All houses and weeks</a></nav>");
        header.Line($"<h1>{title}</h1>");
        header.Line($"<p class=\"under\">{PeriodWords.Dates(first.Period)}{(report.SameTime ? "" : Phrase.Of($" and {PeriodWords.Dates(second.Period)}"))} · {Html.Name(first.House.Nursery)}{(first.House.Nursery == second.House.Nursery ? "" : Phrase.Of($" and {second.House.Nursery}"))}</p>");
        string html = PageShell.Render(title, "../../", "", charts: false, first.House.Invented || second.House.Invented, header.ToHtml(), main.ToHtml());
        return new RenderedPage(html, body.FailedCells) { Head = (title, PeriodWords.Dates(first.Period)), Parts = body.Parts };
    }
}
