namespace ClimateLens.Reports.Cells;

/// <summary>
/// One part of a page: it answers one question from a review. A cell knows nothing of its neighbours; where it throws,
/// the page says so in its place and the rest stands.
/// </summary>
public interface IReportCell
{
    /// <summary>Stable name in camelCase; also the id of the part in the page.</summary>
    string Name { get; }

    /// <summary>The question that it answers, in plain words.</summary>
    string Heading { get; }

    /// <summary>What a notebook may set beside the heading.</summary>
    IReadOnlyList<Notebooks.CellParameter> Parameters => [];

    /// <summary>Keys of the review without which the cell only says why it has no answer.</summary>
    IReadOnlyList<string> Needs => [];

    /// <summary>What it gives.</summary>
    Notebooks.CellGives Gives => Notebooks.CellGives.Sentence | Notebooks.CellGives.Table;

    /// <summary>What its numbers come from.</summary>
    CellBasis Basis => CellBasis.None;

    /// <summary>Answers. Equal reviews and units give equal content.</summary>
    CellContent Render(CellContext context);
}
