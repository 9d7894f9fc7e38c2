using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>What a row of data looks like: the sort of each column.</summary>
/// <param name="Fields">Number of cells.</param>
/// <param name="Sorts">The sort that most filled cells of a column have.</param>
internal sealed record RowModel(int Fields, ImmutableArray<CellSort> Sorts)
{
    private const double MostAlike = 0.75;

    /// <summary>Learns it from lines spread over the file.</summary>
    public static RowModel Of(IEnumerable<string[]> rows, int fields)
    {
        int[][] counts = [.. Enumerable.Range(0, fields).Select(_ => new int[Enum.GetValues<CellSort>().Length])];
        foreach (string[] row in rows.Where(row => row.Length == fields))
        {
            for (int i = 0; i < fields; i++)
            {
                counts[i][(int)CellSorts.Of(row[i])]++;
            }
        }

        return new RowModel(fields, [.. counts.Select(Usual)]);
    }

    /// <summary>Whether a row may be one of data.</summary>
    public bool Fits(string[] row)
    {
        if (row.Length < Fields - 1 || row.Length > Fields + 2)
        {
            return false;
        }

        int judged = 0;
        int alike = 0;
        bool figure = false;
        for (int i = 0; i < Math.Min(row.Length, Fields); i++)
        {
            if (Sorts[i] is not (CellSort.Number or CellSort.Stamp))
            {
                continue;
            }

            CellSort sort = CellSorts.Of(row[i]);
            judged++;
            alike += sort == Sorts[i] || sort is CellSort.Empty or CellSort.Missing ? 1 : 0;
            figure |= sort is CellSort.Number or CellSort.Stamp;
        }

        return figure && alike >= MostAlike * judged;
    }

    private static CellSort Usual(int[] counts)
    {
        int filled = counts[(int)CellSort.Number] + counts[(int)CellSort.Stamp] + counts[(int)CellSort.Text];
        if (filled == 0)
        {
            return CellSort.Empty;
        }

        CellSort[] sorts = [CellSort.Stamp, CellSort.Number, CellSort.Text];
        return sorts.MaxBy(sort => counts[(int)sort]);
    }
}
