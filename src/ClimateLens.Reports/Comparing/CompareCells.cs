namespace ClimateLens.Reports.Comparing;

/// <summary>The parts of a page that compares, in the reader's order. A new part is a new cell in this list.</summary>
public static class CompareCells
{
    /// <summary>The cells.</summary>
    public static IReadOnlyList<ICompareCell> All { get; } =
    [
        new CompareBriefCell(),
        new SensorMatchCell(),
        new DifferencesCell(),
        new ExplainedCell(),
        new DifferenceMapCell(),
        new CurvesCell(),
        new NightsCell(),
        new CompareMethodCell(),
    ];
}
