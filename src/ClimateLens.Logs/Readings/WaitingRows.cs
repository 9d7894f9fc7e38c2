namespace ClimateLens.Logs.Readings;

/// <summary>A row of a repeated hour whose instant is not told yet.</summary>
/// <param name="Ticket">Its number among all such rows of the file, from 0.</param>
/// <param name="Block">Its block.</param>
/// <param name="Row">Its place there; the stamp is provisional.</param>
/// <param name="Raw">The row as it stands in the file.</param>
internal sealed record WaitingRow(int Ticket, YearRows Block, int Row, byte[] Raw);

/// <summary>The rows of a file that wait for their instant.</summary>
internal sealed class WaitingRows
{
    // Far enough behind the hour that the running of the file is clear: a week of five-minute rows.
    private const int RowsUntilDue = 2_016;

    private List<WaitingRow> _rows = [];
    private int _tickets;
    private int _since;

    /// <summary>Whether a block holds a row that waits.</summary>
    public bool Holds(YearRows block) => _rows.Count > 0 && _rows.Exists(row => row.Block == block);

    /// <summary>Notes the last row of a block as waiting.</summary>
    public void Add(YearRows block, ReadOnlySpan<byte> raw)
    {
        _rows.Add(new WaitingRow(_tickets++, block, block.Count - 1, raw.ToArray()));
        _since = 0;
    }

    /// <summary>Counts a row that does not wait; true when those before it have waited long enough.</summary>
    public bool IsDue()
    {
        if (_rows.Count == 0 || ++_since < RowsUntilDue)
        {
            return false;
        }

        _since = 0;
        return true;
    }

    /// <summary>Takes out all rows that wait.</summary>
    public List<WaitingRow> TakeAll()
    {
        List<WaitingRow> taken = _rows;
        _rows = [];
        return taken;
    }
}
