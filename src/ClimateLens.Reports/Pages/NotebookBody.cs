using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Pages;

/// <summary>A part of a page: prose, or a cell.</summary>
/// <param name="Section">It as markup.</param>
/// <param name="Name">Name of the cell; empty for prose.</param>
/// <param name="Heading">Heading of the cell.</param>
internal sealed record BodyPart(Html Section, string Name, string Heading)
{
    /// <summary>Prose with its values, as Markdown; null for a cell.</summary>
    public string? Prose { get; init; }

    /// <summary>What the cell answered; null where it threw.</summary>
    public CellContent? Content { get; init; }

    /// <summary>Data files that hold the numbers of the cell.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];
}

/// <summary>How a page makes a cell.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Files">Data files that hold its numbers.</param>
/// <param name="Answer">Makes its content.</param>
internal sealed record CellMaker(string Heading, IReadOnlyList<string> Files, Func<CellContent> Answer);

/// <summary>The prose and the cells of a notebook, in its order, as a page shows them.</summary>
/// <param name="Parts">Prose and cells; a cell that has nothing to say is left out.</param>
/// <param name="FailedCells">Names of the cells that threw.</param>
internal sealed record NotebookBody(IReadOnlyList<BodyPart> Parts, ImmutableArray<string> FailedCells)
{
    /// <summary>Renders the parts of a notebook.</summary>
    /// <param name="parts">Prose and cells.</param>
    /// <param name="values">What prose may take values from.</param>
    /// <param name="makerOf">How each cell is made.</param>
    public static NotebookBody Of(IEnumerable<NotebookPart> parts, Lazy<JsonDocument> values, Func<CellPart, CellMaker> makerOf)
    {
        List<BodyPart> made = [];
        var failed = ImmutableArray.CreateBuilder<string>();
        foreach (NotebookPart part in parts)
        {
            if (part is ProsePart prose)
            {
                made.Add(new BodyPart(HtmlBuilder.Of($"<div class=\"prose\">{ProseMarkup.Of(prose.Markdown, values)}</div>"), "", "") { Prose = ProseMarkup.Filled(prose.Markdown, values) });
                continue;
            }

            CellPart named = (CellPart)part;
            CellMaker maker = makerOf(named);
            string heading = named.Values.Text(CellParameter.Heading.Name) ?? maker.Heading;
            Html section = CellSection.Render(named.Cell, heading, maker.Answer, out CellContent? content);
            if (content is null)
            {
                failed.Add(named.Cell);
            }

            if (!section.IsEmpty)
            {
                made.Add(new BodyPart(section, named.Cell, heading) { Content = content, Files = maker.Files });
            }
        }

        return new NotebookBody(made, failed.ToImmutable());
    }

    /// <summary>The sections one under the other.</summary>
    /// <param name="main">Where they go.</param>
    public void AddTo(HtmlBuilder main)
    {
        foreach (BodyPart part in Parts)
        {
            main.Line(part.Section);
        }
    }
}
