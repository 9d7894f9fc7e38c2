namespace ClimateLens.Reports.Notebooks;

/// <summary>What a cell is, for those who write notebooks.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Heading">The question that it answers.</param>
/// <param name="Parameters">What it takes.</param>
/// <param name="Needs">Keys of the review without which it only says why it has no answer; empty where it always has one.</param>
/// <param name="Gives">What it gives.</param>
public sealed record CellInfo(string Name, string Heading, IReadOnlyList<CellParameter> Parameters, IReadOnlyList<string> Needs, CellGives Gives);

/// <summary>What a cell gives.</summary>
[Flags]
public enum CellGives
{
    /// <summary>One sentence.</summary>
    Sentence = 1,

    /// <summary>A table or list.</summary>
    Table = 2,

    /// <summary>A figure.</summary>
    Figure = 4,

    /// <summary>Data as CSV beside the page.</summary>
    Data = 8,
}
