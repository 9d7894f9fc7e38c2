using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>One part of a page that holds two reviews side by side.</summary>
public interface ICompareCell
{
    /// <summary>Stable name in camelCase.</summary>
    string Name { get; }

    /// <summary>The question that it answers.</summary>
    string Heading { get; }

    /// <summary>Data files beside the page that hold its numbers.</summary>
    IReadOnlyList<string> Files => ["comparison.json"];

    /// <summary>Answers.</summary>
    CellContent Render(CompareContext context);
}

/// <summary>All that such a cell may look at.</summary>
/// <param name="Report">The comparison.</param>
/// <param name="First">One review.</param>
/// <param name="Second">The other.</param>
/// <param name="Units">Units to read.</param>
public sealed record CompareContext(ComparisonReport Report, Review First, Review Second, DisplayUnits Units)
{
    /// <summary>The first side in a few words: the house, and the period where both sides are one house.</summary>
    public string FirstName => Name(Report.First);

    /// <summary>The second side likewise.</summary>
    public string SecondName => Name(Report.Second);

    private string Name(ComparedSide side) => Report.SameTime ? side.Name : $"{side.Name}, {PeriodWords.Name(side.Period)}";
}
