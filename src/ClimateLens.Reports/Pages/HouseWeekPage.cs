using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>A rendered page, and the names of the cells that threw.</summary>
internal sealed record RenderedPage(string Html, ImmutableArray<string> FailedCells)
{
    /// <summary>Its title, and what stands under it.</summary>
    public (string Title, string Under) Head { get; init; }

    /// <summary>Its parts.</summary>
    public IReadOnlyList<BodyPart> Parts { get; init; } = [];
}

/// <summary>A page of one house period: the prose and cells of a notebook in order, each cell in its own section.</summary>
internal static class HouseWeekPage
{
    /// <summary>The page of a notebook.</summary>
    /// <param name="review">The review.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="files">Names of the data files beside the page.</param>
    /// <param name="notebook">The notebook.</param>
    /// <param name="all">All notebooks of the house's week, for the links between their pages.</param>
    /// <param name="values">review.json, from which prose takes its values.</param>
    /// <param name="store">Folder of the store as the nursery file names it.</param>
    public static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, Notebook notebook, IReadOnlyList<Notebook> all, Lazy<JsonDocument> values, string store)
        => Render(CellContext.Of(review, units, files) with { Store = store }, notebook.Parts, HouseWeekCells.All, notebook, all, values);

    /// <summary>A page of cells.</summary>
    public static RenderedPage Render(Review review, DisplayUnits units, IEnumerable<string> files, IReadOnlyList<IReportCell> cells)
        => Render(CellContext.Of(review, units, files), [.. cells.Select(c => new CellPart(0, c.Name, CellValues.None))], cells, null, [], new(() => JsonDocument.Parse("{}")));

    private static RenderedPage Render(
        CellContext context, ImmutableArray<NotebookPart> parts, IReadOnlyList<IReportCell> cells, Notebook? notebook, IReadOnlyList<Notebook> all, Lazy<JsonDocument> values)
    {
        Review review = context.Review;
        NotebookBody body = NotebookBody.Of(parts, values, part =>
        {
            IReportCell cell = cells.Single(c => c.Name == part.Cell);
            return new CellMaker(cell.Heading, [.. cell.Basis.Files.Where(f => context.Files.Contains(f))], () =>
            {
                CellContent content = cell.Render(context with { Values = part.Values });
                return content.IsNothing ? content : content with { Fold = CellFold.Of(cell.Basis, content.Method, context) };
            });
        });
        HtmlBuilder main = new();
        if (!body.FailedCells.IsEmpty)
        {
            main.Line($"<p class=\"failed\" role=\"note\">{Words.Count(body.FailedCells.Length, "part", "parts")} of this page could not be made; the rest stands.</p>");
        }

        body.AddTo(main);
        main.Line(Others(notebook, all));
        string of = notebook is null or { IsMain: true } ? "" : $": {Phrase.Of(notebook.Title)}";
        string title = $"{review.House.Name}, {PeriodWords.Name(review.Period)}{of}";
        string mark = !body.FailedCells.IsEmpty ? "" // made again by the next run
            : notebook is null ? PageMark.Of(review.Provenance.InputHash, context.Units.System)
            : PageMark.Of(review.Provenance.InputHash, context.Units.System, notebook, all);
        string html = PageShell.Render(title, "../../", mark, charts: true, review.House.Invented, Header(review, of, notebook, all), main.ToHtml(), notebook: notebook?.Name ?? "");
        return new RenderedPage(html, body.FailedCells) { Head = (title, Under(review)), Parts = body.Parts };
    }

    private static Html Header(Review review, string of, Notebook? notebook, IReadOnlyList<Notebook> all)
    {
        HtmlBuilder header = new();
        header.Add($"<nav aria-label=\"Site\"><a href=\"../../index.html\">All houses and weeks</a>");
        if (notebook is not null)
        {
            header.Add($" · <a href=\"../season.html\">The season</a>");
        }

        foreach (Html link in LinksToOthers(notebook, all))
        {
            header.Add($"<span class=\"more\"> · {link}</span>");
        }

        header.Line($"</nav>");
        header.Line($"<h1>{Html.Name(review.House.Name)}, {PeriodWords.Name(review.Period)}{of}</h1>");
        header.Line($"<p class=\"under\">{PeriodWords.Dates(review.Period)}<span class=\"more\"> · {Html.Name(review.House.Nursery)}{Crop(review)}</span></p>");
        return header.ToHtml();
    }

    /// <summary>The other pages of the week again, for narrow screens, whose first screen has no room for them.</summary>
    private static Html Others(Notebook? notebook, IReadOnlyList<Notebook> all)
    {
        Html[] others = [.. LinksToOthers(notebook, all)];
        if (others.Length == 0)
        {
            return Html.Empty;
        }

        HtmlBuilder links = new();
        links.Add($"<nav class=\"narrow\" aria-label=\"Other pages of the week\">");
        foreach (Html link in others)
        {
            links.Add($"{link} ");
        }

        return links.Line($"</nav>").ToHtml();
    }

    private static IEnumerable<Html> LinksToOthers(Notebook? notebook, IReadOnlyList<Notebook> all) => all.Where(n => n.Name != notebook?.Name)
        .Select(other => HtmlBuilder.Of($"<a href=\"{other.PageName}\">{(other.IsMain ? Phrase.Of("The week") : Phrase.Of(other.Title))}</a>"));

    private static string Crop(Review review) => review.House.Crop is { Length: > 0 } species ? $" · {species}" : "";

    private static string Under(Review review)
        => $"{PeriodWords.Dates(review.Period)} · {review.House.Nursery}{Crop(review)}{(review.House.Invented ? Phrase.Of(" · invented demonstration data") : "")}";
}
