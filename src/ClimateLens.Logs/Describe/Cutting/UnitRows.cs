using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Tells rows of units and rows of "average" and "total" from rows of names.</summary>
internal static class UnitRows
{
    private static readonly HashSet<string> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        "avg", "average", "mean", "smp", "sample", "tot", "total", "min", "max", "std", "wvc", "inst", "instant", "actual", "float", "real", "int", "integer", "double", "string", "bool", "datetime", "date",
        "mittel", "gem", "gns", "moy", "media",
    };

    /// <summary>Whether most filled cells are units; marks for "none" may stand between.</summary>
    public static bool IsUnits(string[] cells)
    {
        string[] filled = [.. cells.Where(c => c.Length > 0 && CellSorts.Of(c) != CellSort.Missing)];
        int units = filled.Count(c => IsUnit(c));
        return units > 0 && units * 2 >= filled.Length && !filled.Any(c => c.Length > 14 && !IsUnit(c));
    }

    /// <summary>Whether all cells say which figure of an interval a column holds.</summary>
    public static bool IsKinds(string[] cells)
    {
        string[] filled = [.. cells.Where(c => c.Length > 0)];
        return filled.Length > 0 && filled.All(Kinds.Contains);
    }

    /// <summary>How much a row looks like names: filled cells and different texts count, words for what is measured count more.</summary>
    public static int NameScore(string[] cells)
    {
        string[] texts = [.. cells.Where(c => c.Length > 0)];
        return (2 * texts.Length) + texts.Distinct(StringComparer.Ordinal).Count() + (2 * texts.Count(c => WordFinder.Find(c).Exists(w => w.Idea is not (Idea.House or Idea.Inside or Idea.Outside or Idea.Number))));
    }

    private static bool IsUnit(string cell)
    {
        string bare = cell.Trim().Trim('[', ']', '(', ')');
        return UnitWords.Of(bare) is not null || bare is "TS" or "RN" or "dd-mm-yyyy" or "hh:mm" or "hh:mm:ss" or "yyyy-mm-dd";
    }
}
