using System.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>
/// A header row as its names read, also where quoted names stand over several lines. Rows of data are read line by line, so that one bad quote
/// spoils one row; lines of a header are joined only as long as every quote in them stands where one may stand.
/// </summary>
internal sealed class QuotedHeader : IDisposable
{
    private const int MostLines = 64;

    private readonly DialectSettings _dialect;
    private readonly RowReader? _joined;

    /// <summary>Looks at the current row, and at those behind it where a quote of it is open.</summary>
    /// <param name="rows">The rows of the file.</param>
    /// <param name="dialect">How they are cut.</param>
    public QuotedHeader(RowReader rows, DialectSettings dialect)
    {
        _dialect = dialect;
        Row = rows;
        if (!rows.IsCutAtMarks || Walk(rows.Raw, isOpen: false) != true)
        {
            return;
        }

        byte[] whole = rows.Raw.ToArray();
        bool? open = true;
        for (int lines = 1; open == true && lines < MostLines && rows.Next(); lines++)
        {
            open = Walk(rows.Raw, isOpen: true);
            ReadsOn = open is null;
            whole = ReadsOn ? whole : [.. whole, (byte)' ', .. rows.Raw];
        }

        _joined = new RowReader(new MemoryStream(whole), dialect, new UTF8Encoding(false), linesInQuotes: false);
        _joined.Next();
        Row = _joined;
    }

    /// <summary>The row of names.</summary>
    public RowReader Row { get; }

    /// <summary>Whether the row behind it was read already and is none of its own.</summary>
    public bool ReadsOn { get; }

    /// <inheritdoc/>
    public void Dispose() => _joined?.Dispose();

    /// <summary>Whether a quote is open behind a line; null where a quote stands where none may, or a mark between names stands in a name.</summary>
    private bool? Walk(ReadOnlySpan<byte> line, bool isOpen)
    {
        byte quote = (byte)_dialect.QuoteChar;
        byte mark = (byte)_dialect.Delimiter;
        if (isOpen && !line.Contains(quote))
        {
            return line.Contains(mark) ? null : true;
        }

        for (int at = line.IndexOf(quote); at >= 0 && at < line.Length; at++)
        {
            if (line[at] != quote)
            {
                continue;
            }

            bool doubled = isOpen && at + 1 < line.Length && line[at + 1] == quote;
            bool edge = isOpen ? at + 1 == line.Length || line[at + 1] == mark : at == 0 || line[at - 1] == mark;
            if (!doubled && !edge)
            {
                return null;
            }

            at += doubled ? 1 : 0;
            isOpen = doubled ? isOpen : !isOpen;
        }

        return isOpen;
    }
}
