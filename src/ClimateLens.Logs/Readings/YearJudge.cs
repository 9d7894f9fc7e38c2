using ClimateLens.Logs.SetAside;

namespace ClimateLens.Logs.Readings;

/// <summary>Tells what the rows of a file say of those that the store holds of the same year, counts them and sets aside what loses.</summary>
/// <param name="counts">What became of the file's rows.</param>
/// <param name="aside">Where values go that lose.</param>
internal sealed class YearJudge(RowCounts counts, SetAsideLog aside)
{
    /// <summary>Places of the file's earlier versions in the source's list of files: rows of theirs that this one leaves out are replaced.</summary>
    public HashSet<int> EarlierVersions { get; init; } = [];

    /// <summary>Whether another file may hold a row of this time as well, so that the row is not this file's to remove.</summary>
    public Func<long, bool> IsElsewhere { get; init; } = _ => false;

    /// <summary>Set after the ledger was lost, when nobody knows which file was the later one: then what the store holds stands. The place of the file in the source's list of files.</summary>
    public int? StoreStandsOver { get; init; }

    /// <summary>Judges one year. Both must be in ascending time without repeats.</summary>
    public YearNews Judge(SortedRows? held, SortedRows file)
    {
        var news = new YearNews(new RowNews[file.Count], []);
        if (held is null || held.Count == 0)
        {
            Array.Fill(news.Rows, RowNews.Adds);
            AcceptAll(file);
            return news;
        }

        int[] places = YearMerge.Places(file.Names, held.Names);
        using var older = new RowCursor(held);
        using var newer = new RowCursor(file);
        older.MoveNext();
        for (int row = 0; newer.MoveNext(); row++)
        {
            while (!older.AtEnd && older.Utc < newer.Utc)
            {
                Leave(older, newer.Block.Line[newer.Row], news.Replaced);
            }

            bool known = !older.AtEnd && older.Utc == newer.Utc;
            news.Rows[row] = known ? Judge(older, newer, places) : RowNews.Adds;
            if (known)
            {
                older.MoveNext();
            }
            else
            {
                counts.Accept(newer.Utc);
            }
        }

        while (EarlierVersions.Count > 0 && !older.AtEnd)
        {
            Leave(older, 0, news.Replaced);
        }

        return news;
    }

    private void AcceptAll(SortedRows file)
    {
        if (file.Count > 0)
        {
            counts.Accept(file.Count, file.First, file.Last);
        }
    }

    /// <summary>A row of the store at a time that the file does not have; the line is that of the file's next row, 0 when there is none.</summary>
    private void Leave(RowCursor older, int line, List<long> replaced)
    {
        if (EarlierVersions.Contains(older.Block.File[older.Row]) && older.Utc >= counts.From && older.Utc <= counts.To && !IsElsewhere(older.Utc))
        {
            counts.Conflicts++;
            aside.Add(ProblemCodes.Replaced, line, null, RowComparison.Text(older.Block, older.Row), "the row in the newer version of the file");
            replaced.Add(older.Utc);
        }

        older.MoveNext();
    }

    private RowNews Judge(RowCursor older, RowCursor newer, int[] places)
    {
        RowNews news = RowComparison.Compare(newer.Block, newer.Row, older.Block, older.Row, places);
        if (StoreStandsOver is int file && (news.HasFlag(RowNews.Contradicts) || older.Block.File[older.Row] == file))
        {
            Stand(older, newer, isItsOwn: older.Block.File[older.Row] == file);
            return RowNews.None;
        }

        if (news == RowNews.None)
        {
            counts.Duplicates++;
            return news;
        }

        counts.Accept(newer.Utc);
        if (news.HasFlag(RowNews.Contradicts))
        {
            counts.Conflicts++;
            aside.Add(ProblemCodes.Conflict, newer.Block.Line[newer.Row], null, RowComparison.Text(older.Block, older.Row), "the values of the newer file");
        }

        return news;
    }

    /// <summary>The row of the store stands: it came from this file, or it contradicts the file's row.</summary>
    private void Stand(RowCursor older, RowCursor newer, bool isItsOwn)
    {
        if (isItsOwn)
        {
            counts.Accept(newer.Utc);
            return;
        }

        counts.SetAside++;
        aside.Add(ProblemCodes.Overruled, newer.Block.Line[newer.Row], null, RowComparison.Text(newer.Block, newer.Row), "the values that the store holds");
    }
}
