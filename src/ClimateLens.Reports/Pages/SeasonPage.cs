using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Seasons;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>The page of a house over all its weeks.</summary>
internal static class SeasonPage
{
    /// <summary>Renders a notebook of a season.</summary>
    /// <param name="weeks">The pages of the house, oldest first; at least one.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="notebook">The notebook.</param>
    public static RenderedPage Render(ImmutableArray<SiteEntry> weeks, DisplayUnits units, Notebook notebook)
    {
        SeasonContext context = new(weeks, units);
        NotebookBody body = NotebookBody.Of(notebook.Parts, new(() => JsonDocument.Parse(Latest.Write([.. weeks.Reverse()]))), part =>
        {
            ISeasonCell cell = SeasonCells.All.Single(c => c.Name == part.Cell);
            return new CellMaker(cell.Heading, [], () => CellFold.Plain(cell.Render(context), []));
        });
        HtmlBuilder main = new();
        body.AddTo(main);
        SiteEntry last = weeks[^1];
        HtmlBuilder header = new();
        header.Line($"<nav aria-label=\"Site\"><a href=\"../index.html\">All houses and weeks</a></nav>");
        header.Line($"<h1>{Html.Name(last.Summary.HouseName)}: {Phrase.Of(notebook.Title)}</h1>");
        header.Line($"<p class=\"under\">{SitePeriod.Of(weeks[0].Summary.Period).Name} to {SitePeriod.Of(last.Summary.Period).Name} · {Html.Name(last.Nursery)}</p>");
        string html = PageShell.Render($"{last.Summary.HouseName}: {Phrase.Of(notebook.Title)}", "../", "", charts: false, weeks.Any(w => w.Invented), header.ToHtml(), main.ToHtml());
        return new RenderedPage(html, body.FailedCells);
    }
}
