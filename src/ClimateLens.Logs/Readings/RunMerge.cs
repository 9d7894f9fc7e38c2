using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Makes one sequence of the runs of a file, each of them in ascending time. Runs stand in the order of the file: of rows
/// of one time, those of an earlier run come first.
/// </summary>
internal static class RunMerge
{
    /// <summary>Merges; rows of one time all stay.</summary>
    public static SortedRows Merge(IReadOnlyList<SortedRows> runs, RowCollector into)
    {
        int[] places = [.. Enumerable.Range(0, runs[0].Names.Length)];
        Walk(runs, cursor => into.Append(cursor.Block, cursor.Row, places));
        return into.Finish();
    }

    /// <summary>Merges, and makes one row of those that share a time; counts duplicates and rows overruled by a later one.</summary>
    public static SortedRows Tidy(IReadOnlyList<SortedRows> runs, RowCollector into, RowCounts counts, SetAsideLog aside)
    {
        int[] places = [.. Enumerable.Range(0, runs[0].Names.Length)];
        Walk(runs, cursor =>
        {
            if (into.Any && into.Block.Utc[into.Row] == cursor.Utc)
            {
                Collapse(into.Block, into.Row, cursor.Block, cursor.Row, places, counts, aside);
            }
            else
            {
                into.Append(cursor.Block, cursor.Row, places);
            }
        });
        return into.Finish();
    }

    private static void Walk(IReadOnlyList<SortedRows> runs, Action<RowCursor> take)
    {
        RowCursor[] cursors = [.. runs.Select(run => new RowCursor(run))];
        var next = new PriorityQueue<int, (long Utc, int Run)>();
        for (int r = 0; r < cursors.Length; r++)
        {
            Enqueue(next, cursors, r);
        }

        while (next.TryDequeue(out int run, out _))
        {
            RowCursor cursor = cursors[run];
            bool first = next.TryPeek(out _, out (long Utc, int Run) other);
            do
            {
                take(cursor);
            }
            while (cursor.MoveNext() && (!first || (cursor.Utc, run).CompareTo(other) < 0));
            if (!cursor.AtEnd)
            {
                next.Enqueue(run, (cursor.Utc, run));
            }
        }

        foreach (RowCursor cursor in cursors)
        {
            cursor.Dispose();
        }
    }

    private static void Enqueue(PriorityQueue<int, (long Utc, int Run)> next, RowCursor[] cursors, int run)
    {
        if (cursors[run].MoveNext())
        {
            next.Enqueue(run, (cursors[run].Utc, run));
        }
    }

    private static void Collapse(YearRows kept, int k, YearRows later, int l, int[] places, RowCounts counts, SetAsideLog aside)
    {
        RowNews news = RowComparison.Compare(later, l, kept, k, places);
        if (news == RowNews.None)
        {
            counts.Duplicates++;
            return;
        }

        if (news.HasFlag(RowNews.Contradicts))
        {
            aside.Add(ProblemCodes.Repeated, kept.Line[k], null, RowComparison.Text(kept, k), $"the values of line {later.Line[l]}");
            counts.SetAside++;
            counts.Conflicts++;
        }
        else
        {
            counts.Accept(kept.Utc[k]); // the two rows complete each other: both are in the store, as one
        }

        kept.Line[k] = later.Line[l];
        for (int c = 0; c < places.Length; c++)
        {
            double value = later.Columns[c][l];
            kept.Columns[c][k] = double.IsNaN(value) ? kept.Columns[c][k] : value;
        }
    }
}
