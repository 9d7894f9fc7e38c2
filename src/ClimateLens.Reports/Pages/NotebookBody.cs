using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Pages;

/// <summary>The prose and the cells of a notebook, in its order, as a page shows them.</summary>
/// <param name="Sections">Prose and cells; a cell that has nothing to say is left out.</param>
/// <param name="FailedCells">Names of the cells that threw.</param>
internal sealed record NotebookBody(IReadOnlyList<Html> Sections, ImmutableArray<string> FailedCells)
{
    /// <summary>Renders the parts of a notebook.</summary>
    /// <param name="parts">Prose and cells.</param>
    /// <param name="values">What prose may take values from.</param>
    /// <param name="cellOf">The heading of a cell and how it answers.</param>
    public static NotebookBody Of(IEnumerable<NotebookPart> parts, Lazy<JsonDocument> values, Func<CellPart, (string Heading, Func<CellContent> Answer)> cellOf)
    {
        List<Html> sections = [];
        var failed = ImmutableArray.CreateBuilder<string>();
        foreach (NotebookPart part in parts)
        {
            if (part is ProsePart prose)
            {
                sections.Add(HtmlBuilder.Of($"<div class=\"prose\">{ProseMarkup.Of(prose.Markdown, values)}</div>"));
                continue;
            }

            CellPart named = (CellPart)part;
            (string heading, Func<CellContent> answer) = cellOf(named);
            Html section = CellSection.Render(named.Cell, named.Values.Text(CellParameter.Heading.Name) ?? heading, answer, out bool threw);
            if (threw)
            {
                failed.Add(named.Cell);
            }

            if (!section.IsEmpty)
            {
                sections.Add(section);
            }
        }

        return new NotebookBody(sections, failed.ToImmutable());
    }

    /// <summary>The sections one under the other.</summary>
    /// <param name="main">Where they go.</param>
    public void AddTo(HtmlBuilder main)
    {
        foreach (Html section in Sections)
        {
            main.Line(section);
        }
    }
}
