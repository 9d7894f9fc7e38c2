using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Readings;

/// <summary>Puts the rows of one file into ascending time and makes one of those that share a time.</summary>
internal static class YearTidy
{
    /// <summary>Stamp of a row that was set aside after all.</summary>
    public const long Dropped = long.MinValue;

    /// <summary>Tidies rows in place; counts duplicates and rows overruled by a later one.</summary>
    public static void Tidy(YearRows rows, RowCounts counts, SetAsideLog aside)
    {
        if (IsAscending(rows))
        {
            return;
        }

        Sort(rows);
        Collapse(rows, counts, aside);
    }

    private static bool IsAscending(YearRows rows)
    {
        ReadOnlySpan<long> utc = rows.Utc.AsSpan(0, rows.Count);
        for (int i = 1; i < utc.Length; i++)
        {
            if (utc[i] <= utc[i - 1])
            {
                return false;
            }
        }

        return utc.Length == 0 || utc[0] != Dropped;
    }

    /// <summary>Stable sort by time.</summary>
    private static void Sort(YearRows rows)
    {
        int count = rows.Count;
        var keys = new (long Utc, int Row)[count];
        for (int i = 0; i < count; i++)
        {
            keys[i] = (rows.Utc[i], i);
        }

        Array.Sort(keys);
        rows.Utc = Permuted(rows.Utc, keys);
        rows.File = Permuted(rows.File, keys);
        rows.Line = Permuted(rows.Line, keys);
        for (int c = 0; c < rows.Columns.Length; c++)
        {
            rows.Columns[c] = Permuted(rows.Columns[c], keys);
        }
    }

    private static T[] Permuted<T>(T[] old, (long Utc, int Row)[] keys)
    {
        var sorted = new T[keys.Length];
        for (int i = 0; i < sorted.Length; i++)
        {
            sorted[i] = old[keys[i].Row];
        }

        return sorted;
    }

    private static void Collapse(YearRows rows, RowCounts counts, SetAsideLog aside)
    {
        int[] places = [.. Enumerable.Range(0, rows.Names.Length)];
        int kept = -1;
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows.Utc[i] == Dropped)
            {
                continue;
            }

            if (kept < 0 || rows.Utc[kept] != rows.Utc[i])
            {
                rows.Move(i, ++kept);
                continue;
            }

            RowNews news = RowComparison.Compare(rows, i, rows, kept, places);
            if (news == RowNews.None)
            {
                counts.Duplicates++;
            }
            else
            {
                Overrule(rows, kept, i, news, counts, aside);
            }
        }

        rows.Count = kept + 1;
    }

    private static void Overrule(YearRows rows, int older, int newer, RowNews news, RowCounts counts, SetAsideLog aside)
    {
        if (news.HasFlag(RowNews.Contradicts))
        {
            aside.Add(ProblemCodes.Repeated, rows.Line[older], null, RowComparison.Text(rows, older), $"the values of line {rows.Line[newer]}");
            counts.SetAside++;
            counts.Conflicts++;
        }
        else
        {
            counts.Accept(rows.Utc[newer]); // the two rows complete each other: both are in the store, as one
        }

        rows.Line[older] = rows.Line[newer];
        foreach (double[] column in rows.Columns)
        {
            column[older] = double.IsNaN(column[newer]) ? column[older] : column[newer];
        }
    }
}
