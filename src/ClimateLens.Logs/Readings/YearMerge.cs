namespace ClimateLens.Logs.Readings;

/// <summary>Lays the rows of a file over those that the store holds of the same year.</summary>
internal static class YearMerge
{
    /// <summary>Lays; the values of the file win. Both must be in ascending time without repeats.</summary>
    /// <param name="held">Rows of the store.</param>
    /// <param name="file">Rows of the file.</param>
    /// <param name="news">What the file says of them.</param>
    /// <param name="into">Takes the result; its columns hold those of both.</param>
    public static SortedRows Lay(SortedRows held, SortedRows file, YearNews news, RowCollector into)
    {
        (int[] from, int[] to) = (Places(held.Names, into.Block.Names), Places(file.Names, into.Block.Names));
        using var older = new RowCursor(held);
        using var newer = new RowCursor(file);
        older.MoveNext();
        newer.MoveNext();
        int row = 0;
        int replaced = 0;
        while (!older.AtEnd || !newer.AtEnd)
        {
            if (newer.AtEnd || (!older.AtEnd && older.Utc < newer.Utc))
            {
                if (replaced < news.Replaced.Count && news.Replaced[replaced] == older.Utc)
                {
                    replaced++;
                }
                else
                {
                    into.Append(older.Block, older.Row, from);
                }

                older.MoveNext();
                continue;
            }

            if (older.AtEnd || newer.Utc < older.Utc)
            {
                into.Append(newer.Block, newer.Row, to);
            }
            else
            {
                into.Append(older.Block, older.Row, from);
                LayOver(into, newer, to, news.Rows[row]);
                older.MoveNext();
            }

            newer.MoveNext();
            row++;
        }

        return into.Finish();
    }

    /// <summary>Names of both, in ordinal order.</summary>
    public static string[] Union(string[] a, string[] b) => a.AsSpan().SequenceEqual(b) ? a : [.. a.Union(b).Order(StringComparer.Ordinal)];

    /// <summary>For each name its place in another list, or -1.</summary>
    public static int[] Places(string[] names, string[] within) => [.. names.Select(name => Array.IndexOf(within, name))];

    private static void LayOver(RowCollector into, RowCursor newer, int[] places, RowNews news)
    {
        if (news == RowNews.None)
        {
            return;
        }

        YearRows block = into.Block;
        block.File[into.Row] = newer.Block.File[newer.Row];
        for (int c = 0; c < places.Length; c++)
        {
            double value = newer.Block.Columns[c][newer.Row];
            if (!double.IsNaN(value))
            {
                block.Columns[places[c]][into.Row] = value;
            }
        }
    }
}
