namespace ClimateLens.Reports.Seasons;

/// <summary>The parts of a page of a season, in the reader's order. A new part is a new cell in this list.</summary>
internal static class SeasonCells
{
    /// <summary>The cells.</summary>
    public static IReadOnlyList<ISeasonCell> All { get; } = [new SeasonBriefCell(), new SeasonChartCell(), new SeasonTableCell()];
}
