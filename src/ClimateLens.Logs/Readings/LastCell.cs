using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Takes back the last cell of a row that may have lost its end: where the file breaks off in it, or a line end stands in it. Nothing in such a
/// row itself is odd (<c>7</c> of <c>75</c>), so what stands around it tells. Common practice, no source.
/// </summary>
/// <param name="counts">What became of the rows.</param>
/// <param name="aside">Where the cell goes.</param>
internal sealed class LastCell(RowCounts counts, SetAsideLog aside)
{
    private int _seen;
    private int _length; // of the last cell of the newest row that has one, but the very newest
    private int _newest;

    /// <summary>Looks at what stands behind the newest row, once the row behind it, or none, was found.</summary>
    /// <param name="window">The rows.</param>
    /// <param name="table">The table.</param>
    /// <param name="columns">The columns.</param>
    public void LookBehind(RowWindow window, ExportTable table, ReadingColumn[] columns)
    {
        if (table.PieceLine != _seen && window.Newest is { } row && table.PieceLine == row.Line + 1)
        {
            TakeBack(row, table, columns);
        }

        _seen = table.PieceLine;
    }

    /// <summary>Notes the row that was pushed.</summary>
    public void Note(HeldRow row)
    {
        _length = _newest > 0 ? _newest : _length;
        _newest = row.EndLength;
    }

    /// <summary>Looks at the newest row, behind which the file ends without a line end.</summary>
    public void LookAtEnd(RowWindow window, ExportTable table, ReadingColumn[] columns)
    {
        if (window.Newest is { } row && row.Line == table.LastLine && !HasMark(row, table) && row.EndLength < _length)
        {
            TakeBack(row, table, columns);
        }
    }

    /// <summary>Takes the last cell of a row back, unless it is whole.</summary>
    private void TakeBack(HeldRow row, ExportTable table, ReadingColumn[] columns)
    {
        int field = table.FieldCount - 1;
        if (row.EndIsWhole || row.Raw is [.., (byte)'"'] || Array.FindIndex(columns, c => c.Field == field) < 0)
        {
            return;
        }

        for (int c = 0; c < columns.Length; c++)
        {
            row.Values[c] = columns[c].Field == field ? double.NaN : row.Values[c];
        }

        row.OddField = row.OddField == field ? -1 : row.OddField;
        counts.CellsNotRead++;
        aside.Add(ProblemCodes.CutShort, row.Line, field + 1, row.EndLength == 0 ? [] : EndOf(row, table), "a cell with its end");
    }

    /// <summary>Whether a mark stands behind its last cell.</summary>
    private static bool HasMark(HeldRow row, ExportTable table) => row.EndLength > 0 && row.Raw is [.., var end] && end == table.Delimiter;

    private static ReadOnlySpan<byte> EndOf(HeldRow row, ExportTable table) => row.Raw.TrimEnd(table.Delimiter)[^row.EndLength..];
}
