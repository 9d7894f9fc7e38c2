using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Where the names and the data of a table stand.</summary>
/// <param name="Cut">How lines are cut.</param>
/// <param name="NamesLine">1-based line of the names; 0 when there is none.</param>
/// <param name="UnitsLine">1-based line of the units; 0 when they have none of their own.</param>
/// <param name="DataLine">1-based line of the first row of data.</param>
/// <param name="Names">Names by column, empty where there is none.</param>
/// <param name="Units">Units of their own line by column, or empty.</param>
/// <param name="Groups">What stands above the names by column, or empty.</param>
/// <param name="Titles">Texts above all that.</param>
internal sealed record Layout(
    CutGuess Cut,
    int NamesLine,
    int UnitsLine,
    int DataLine,
    ImmutableArray<string> Names,
    ImmutableArray<string> Units,
    ImmutableArray<string> Groups,
    ImmutableArray<string> Titles)
{
    /// <summary>Number of cells of most rows of data.</summary>
    public int Fields => Cut.Fields;

    /// <summary>Whether the import can point at columns by the names of the header: it has as many cells as the data.</summary>
    public bool NamesFit { get; init; }

    /// <summary>Number of names that do not stand over as many cells, so that it is not known which belongs to which; 0 where they do.</summary>
    public int StrayNames { get; init; }

    /// <summary>What stands above a column: a name over several columns stands over the first of them only.</summary>
    public string GroupOf(int column)
    {
        while (column > 0 && Groups[column].Length == 0)
        {
            column--;
        }

        return Groups[column];
    }

    /// <summary>Line of a header above the names that makes them differ, or 0.</summary>
    public int GroupsLine { get; init; }

    /// <summary>What lines of remarks begin with, or null.</summary>
    public char? Comment { get; init; }

    /// <summary>The sort that most filled cells of a column have.</summary>
    public ImmutableArray<CellSort> Sorts { get; init; } = [];
}
