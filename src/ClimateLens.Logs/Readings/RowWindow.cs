namespace ClimateLens.Logs.Readings;

/// <summary>The last rows of a file: each is judged when two rows behind it are known, beside the two before it.</summary>
/// <param name="columns">Number of columns of readings.</param>
internal sealed class RowWindow(int columns)
{
    private const int Behind = 2;
    private const int Size = (2 * Behind) + 1;

    private readonly HeldRow[] _rows = [.. Enumerable.Range(0, Size).Select(_ => new HeldRow(columns))];
    private long _pushed;
    private long _taken;

    /// <summary>The place for the next row, to be filled before it is pushed.</summary>
    public HeldRow Next => _rows[_pushed % Size];

    /// <summary>The row that was pushed last, if it was not taken yet.</summary>
    public HeldRow? Newest => _pushed > _taken ? _rows[(_pushed - 1) % Size] : null;

    /// <summary>Pushes the row that <see cref="Next"/> was filled with.</summary>
    public void Push() => _pushed++;

    /// <summary>Takes the oldest row that can be judged; null when there is none.</summary>
    /// <param name="atEnd">Whether no further rows will come.</param>
    public HeldRow? Take(bool atEnd) => _pushed - _taken > (atEnd ? 0 : Behind) ? _rows[_taken++ % Size] : null;

    /// <summary>A row near the one that was taken last: -2 to 2 rows behind it; null where the file has none.</summary>
    public HeldRow? Neighbour(int distance)
    {
        long place = _taken - 1 + distance;
        return place >= 0 && place < _pushed ? _rows[place % Size] : null;
    }
}
