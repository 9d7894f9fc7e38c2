using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Readings;

/// <summary>Lays the tidied rows of a file over the rows that the store holds for the same year.</summary>
internal static class YearMerge
{
    /// <summary>Merges; the newer value wins, the older row is kept aside. Returns <paramref name="held"/> itself when nothing is new.</summary>
    public static YearRows Merge(YearRows? held, YearRows file, RowCounts counts, SetAsideLog aside)
    {
        if (held is null || held.Count == 0)
        {
            for (int i = 0; i < file.Count; i++)
            {
                counts.Accept(file.Utc[i]);
            }

            return file;
        }

        RowNews[] news = Judge(held, file, counts, aside);
        return Array.TrueForAll(news, n => n == RowNews.None) ? held : Lay(held, file, news);
    }

    /// <summary>Adds rows only where the others have none of that time; nothing is counted.</summary>
    public static YearRows Fill(YearRows rows, YearRows gaps)
    {
        var union = new YearRows(Union(rows.Names, gaps.Names));
        union.Grow(rows.Count + gaps.Count);
        (int[] from, int[] to) = (Places(rows.Names, union.Names), Places(gaps.Names, union.Names));
        for (int i = 0, j = 0; i < rows.Count || j < gaps.Count;)
        {
            bool takeGap = i == rows.Count || (j < gaps.Count && gaps.Utc[j] < rows.Utc[i]);
            j += !takeGap && j < gaps.Count && gaps.Utc[j] == rows.Utc[i] ? 1 : 0;
            Append(union, takeGap ? gaps : rows, takeGap ? j++ : i++, takeGap ? to : from);
        }

        return union;
    }

    /// <summary>Names of both, in ordinal order.</summary>
    public static string[] Union(string[] a, string[] b) => [.. a.Union(b).Order(StringComparer.Ordinal)];

    /// <summary>For each name its place in a longer list.</summary>
    public static int[] Places(string[] names, string[] within) => [.. names.Select(name => Array.IndexOf(within, name))];

    /// <summary>What each row of the file says; a time that the store lacks always adds.</summary>
    private static RowNews[] Judge(YearRows held, YearRows file, RowCounts counts, SetAsideLog aside)
    {
        var news = new RowNews[file.Count];
        YearRows wide = WithColumns(held, Union(held.Names, file.Names));
        int[] places = Places(file.Names, wide.Names);
        int j = 0;
        for (int i = 0; i < file.Count; i++)
        {
            while (j < held.Count && held.Utc[j] < file.Utc[i])
            {
                j++;
            }

            bool known = j < held.Count && held.Utc[j] == file.Utc[i];
            news[i] = known ? RowComparison.Compare(file, i, wide, j, places) : RowNews.Adds;
            if (news[i] == RowNews.None)
            {
                counts.Duplicates++;
                continue;
            }

            counts.Accept(file.Utc[i]);
            if (news[i].HasFlag(RowNews.Contradicts))
            {
                counts.Conflicts++;
                aside.Add(ProblemCodes.Conflict, file.Line[i], null, RowComparison.Text(held, j), "the values of the newer file");
            }
        }

        return news;
    }

    private static YearRows Lay(YearRows held, YearRows file, RowNews[] news)
    {
        var union = new YearRows(Union(held.Names, file.Names));
        union.Grow(held.Count + file.Count);
        (int[] from, int[] to) = (Places(held.Names, union.Names), Places(file.Names, union.Names));
        for (int i = 0, j = 0; i < held.Count || j < file.Count;)
        {
            if (j == file.Count || (i < held.Count && held.Utc[i] < file.Utc[j]))
            {
                Append(union, held, i++, from);
            }
            else if (i == held.Count || file.Utc[j] < held.Utc[i])
            {
                Append(union, file, j++, to);
            }
            else
            {
                Append(union, held, i++, from);
                LayOver(union, file, j, to, news[j]);
                j++;
            }
        }

        return union;
    }

    private static void LayOver(YearRows union, YearRows file, int row, int[] places, RowNews news)
    {
        if (news == RowNews.None)
        {
            return;
        }

        int last = union.Count - 1;
        union.File[last] = file.File[row];
        for (int c = 0; c < places.Length; c++)
        {
            double value = file.Columns[c][row];
            if (!double.IsNaN(value))
            {
                union.Columns[places[c]][last] = value;
            }
        }
    }

    private static void Append(YearRows into, YearRows from, int row, int[] places)
    {
        int at = into.Count++;
        into.Utc[at] = from.Utc[row];
        into.File[at] = from.File[row];
        if (places.Length < into.Columns.Length)
        {
            foreach (double[] column in into.Columns)
            {
                column[at] = double.NaN;
            }
        }

        for (int c = 0; c < places.Length; c++)
        {
            into.Columns[places[c]][at] = from.Columns[c][row];
        }
    }

    private static YearRows WithColumns(YearRows rows, string[] names)
    {
        if (names.Length == rows.Names.Length)
        {
            return rows;
        }

        var wide = new YearRows(names) { Count = rows.Count, Utc = rows.Utc, File = rows.File };
        for (int c = 0; c < names.Length; c++)
        {
            int at = Array.IndexOf(rows.Names, names[c]);
            if (at >= 0)
            {
                wide.Columns[c] = rows.Columns[at];
                continue;
            }

            wide.Columns[c] = new double[rows.Count];
            Array.Fill(wide.Columns[c], double.NaN);
        }

        return wide;
    }
}
