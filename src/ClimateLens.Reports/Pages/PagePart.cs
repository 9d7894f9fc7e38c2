using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Pages;

/// <summary>A part of a page: prose, or a cell with what the notebook gave it.</summary>
/// <param name="Prose">Prose; empty for a cell.</param>
/// <param name="Cell">The cell; null for prose.</param>
/// <param name="Values">Its parameters.</param>
internal sealed record PagePart(string Prose, IReportCell? Cell, CellValues Values)
{
    /// <summary>A cell without parameters.</summary>
    public static PagePart Of(IReportCell cell) => new("", cell, CellValues.None);

    /// <summary>The parts of a notebook of a house's week.</summary>
    public static IReadOnlyList<PagePart> Of(Notebook notebook) => [.. notebook.Parts.Select(Of)];

    private static PagePart Of(NotebookPart part) => part switch
    {
        ProsePart prose => new PagePart(prose.Markdown, null, CellValues.None),
        CellPart cell => new PagePart("", HouseWeekCells.All.Single(c => c.Name == cell.Cell), cell.Values),
        _ => throw new ArgumentException($"A notebook has no part {part.GetType().Name}.", nameof(part)),
    };
}
