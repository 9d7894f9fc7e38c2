using System.Collections.Immutable;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
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
        Lazy<System.Text.Json.JsonDocument> values = new(() => System.Text.Json.JsonDocument.Parse(CompareJson.Write(report)));
        var failed = ImmutableArray.CreateBuilder<string>();
        HtmlBuilder main = new();
        foreach (NotebookPart part in notebook.Parts)
        {
            if (part is ProsePart prose)
            {
                main.Line($"<div class=\"prose\">{ProseMarkup.Of(prose.Markdown, values)}</div>");
                continue;
            }

            CellPart named = (CellPart)part;
            ICompareCell cell = CompareCells.All.Single(c => c.Name == named.Cell);
            main.Line(CellSection.Render(cell.Name, named.Values.Text("heading") ?? cell.Heading, () => cell.Render(context), out bool threw));
            if (threw)
            {
                failed.Add(cell.Name);
            }
        }

        string title = $"{context.FirstName} and {context.SecondName}, {PeriodWords.Name(first.Period)}";
        HtmlBuilder header = new();
        header.Line($"<nav aria-label=\"Site\"><a href=\"../../index.html\">All houses and weeks</a></nav>");
        header.Line($"<h1>{title}</h1>");
        header.Line($"<p class=\"under\">{PeriodWords.Dates(first.Period)}{(report.SameTime ? "" : $" and {PeriodWords.Dates(second.Period)}")} · {Html.Name(first.House.Nursery)}{(first.House.Nursery == second.House.Nursery ? "" : $" and {second.House.Nursery}")}</p>");
        string html = PageShell.Render(title, "../../", "", charts: false, first.House.Invented || second.House.Invented, header.ToHtml(), main.ToHtml());
        return new RenderedPage(html, failed.ToImmutable());
    }
}
