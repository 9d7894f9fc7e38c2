namespace ClimateLens.Logs.Readings;

/// <summary>Walks over sorted rows one by one.</summary>
/// <param name="rows">The rows.</param>
internal sealed class RowCursor(SortedRows rows) : IDisposable
{
    private readonly IEnumerator<YearRows> _blocks = rows.Blocks().GetEnumerator();

    /// <summary>Block of the current row.</summary>
    public YearRows Block { get; private set; } = new([]);

    /// <summary>The current row in its block.</summary>
    public int Row { get; private set; } = -1;

    /// <summary>Stamp of the current row. [µs since 1970-01-01T00:00Z]</summary>
    public long Utc => Block.Utc[Row];

    /// <summary>Whether there is no current row any more.</summary>
    public bool AtEnd { get; private set; }

    /// <summary>Moves to the next row; false at the end.</summary>
    public bool MoveNext()
    {
        if (++Row < Block.Count)
        {
            return true;
        }

        while (_blocks.MoveNext())
        {
            (Block, Row) = (_blocks.Current, 0);
            if (Block.Count > 0)
            {
                return true;
            }
        }

        AtEnd = true;
        return false;
    }

    /// <inheritdoc/>
    public void Dispose() => _blocks.Dispose();
}
