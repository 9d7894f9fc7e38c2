using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Columns whose cells hold a number and its unit: "21,5 °C", "85 %".</summary>
internal static class UnitCells
{
    private const double Nearly = 0.9;

    /// <summary>The unit that nearly all filled cells of a column hold behind their numbers, or null.</summary>
    public static UnitMeaning? Of(IEnumerable<string> cells)
    {
        UnitMeaning?[] units = [.. cells.Where(IsFilled).Select(UnitOf)];
        return units.OfType<UnitMeaning>().GroupBy(u => u.Code).MaxBy(g => g.Count()) is { } most && most.Count() >= Nearly * units.Length
            ? most.First() with { Place = "behind the numbers" }
            : null;
    }

    /// <summary>The number of a cell that holds a number and a unit; any other cell as it is.</summary>
    public static string Number(string cell) => UnitOf(cell) is null ? cell : cell[..End(cell)].TrimEnd();

    private static bool IsFilled(string cell) => cell.Length > 0 && !MissingWords.Contains(cell);

    /// <summary>Letters right behind a number may be anything, as in "14h" or "12a"; a blank or a sign parts a unit from it.</summary>
    private static UnitMeaning? UnitOf(string cell)
    {
        int end = End(cell);
        return end > 0 && end < cell.Length && (cell[end] is ' ' or '\u00A0' or '\u202F' || !char.IsLetter(cell[end])) && UnitWords.Of(cell[end..]) is { Quantities.Count: > 0 } unit
            && NumberShapes.Of(cell[..end].TrimEnd()) != NumberShape.None ? unit : null;
    }

    /// <summary>Where the figures of a cell end.</summary>
    private static int End(string cell)
    {
        int at = 0;
        while (at < cell.Length && (char.IsAsciiDigit(cell[at]) || cell[at] is '+' or '-' or '−' or '.' or ',' or '\'' || (cell[at] is ' ' or '\u00A0' or '\u202F' && at + 1 < cell.Length && char.IsAsciiDigit(cell[at + 1]))))
        {
            at++;
        }

        return at;
    }
}
