using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>What kind of thing a cell seems to hold.</summary>
internal enum CellSort
{
    /// <summary>Nothing.</summary>
    Empty,

    /// <summary>A word for "no value".</summary>
    Missing,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A date, a time of day or both.</summary>
    Stamp,

    /// <summary>Anything else.</summary>
    Text,
}

/// <summary>Sorts cells.</summary>
internal static class CellSorts
{
    /// <summary>The sort of a trimmed cell.</summary>
    public static CellSort Of(string cell)
        => cell.Length == 0 ? CellSort.Empty
        : NumberShapes.Of(cell) != NumberShape.None ? CellSort.Number
        : StampShape.Of(cell).Holds != StampHolds.Nothing ? CellSort.Stamp
        : MissingWords.Contains(cell) ? CellSort.Missing
        : CellSort.Text;
}
