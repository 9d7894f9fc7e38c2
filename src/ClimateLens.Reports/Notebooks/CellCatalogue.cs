using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Comparing;
using ClimateLens.Reports.Seasons;

namespace ClimateLens.Reports.Notebooks;

/// <summary>All cells by what a notebook is for. A new cell is a new class and its line in one of these lists.</summary>
public static class CellCatalogue
{
    /// <summary>Cells that a kind of notebook may name, in the order in which they are listed.</summary>
    public static IReadOnlyList<CellInfo> Of(NotebookKind kind) => kind switch
    {
        NotebookKind.HouseWeek => HouseWeekInfos,
        NotebookKind.HousesWeek => HousesWeekInfos,
        _ => HouseSeasonInfos,
    };

    private static CellInfo[] HousesWeekInfos => [.. CompareCells.All.Select(c => new CellInfo(c.Name, c.Heading, [CellParameter.Heading], [], CellGives.Sentence | CellGives.Table))];

    private static CellInfo[] HouseSeasonInfos => [.. SeasonCells.All.Select(c => new CellInfo(c.Name, c.Heading, [CellParameter.Heading], [], CellGives.Sentence | CellGives.Table))];

    private static CellInfo[] HouseWeekInfos => [.. HouseWeekCells.All.Select(c => new CellInfo(c.Name, c.Heading, [CellParameter.Heading, .. c.Parameters], c.Needs, c.Gives))];
}
