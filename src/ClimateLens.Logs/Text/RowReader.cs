using System.Text;
using System.Text.Unicode;
using ClimateLens.Logs.Cells;
using ClimateLens.Nursery.Settings;
using CsvHelper;

namespace ClimateLens.Logs.Text;

/// <summary>Walks over the rows of delimited text as spans of UTF-8; a span holds until the next row.</summary>
internal sealed class RowReader : IDisposable
{
    private static readonly byte[] Replacement = [0xEF, 0xBF, 0xBD];

    // A file without a mark between its fields is read line by line: neither of these stands in a text.
    private const char NoSeparator = '\u001F';
    private const char NoQuote = '\u001E';

    private readonly CsvReader _csv;
    private readonly FieldCutter? _cutter;
    private bool _isCut;
    private readonly bool _transcoded;
    private readonly byte[] _blanks;
    private readonly byte _comment;
    private readonly byte _quote;
    private CsvMalformedReason? _malformed;

    /// <summary>Opens a reader over a stream, which the caller closes.</summary>
    /// <param name="stream">The text.</param>
    /// <param name="dialect">How it is cut into fields.</param>
    /// <param name="encoding">Its encoding.</param>
    /// <param name="linesInQuotes">Whether a quoted field may hold line ends; if not, one bad quote spoils one row and no more.</param>
    public RowReader(Stream stream, DialectSettings dialect, Encoding encoding, bool linesInQuotes)
    {
        _transcoded = encoding is not UTF8Encoding;
        _comment = dialect.CommentChar is char comment && comment < 128 ? (byte)comment : (byte)0;
        _quote = (byte)dialect.QuoteChar;
        _blanks = [(byte)dialect.Delimiter, (byte)dialect.QuoteChar, (byte)' ', (byte)'\t'];
        _cutter = dialect.Widths.Length > 0 ? new WidthsCutter(dialect.Widths) : dialect.Delimiter == ' ' ? new BlanksCutter((byte)dialect.QuoteChar) : null;
        _csv = CsvReader.Create(stream, Options(dialect, encoding, linesInQuotes), leaveOpen: true);
    }

    /// <summary>1-based line of the file where the row starts.</summary>
    public int Line => (int)Math.Min(_csv.LineNumber, int.MaxValue);

    /// <summary>The row as it stands in the file, without its line end.</summary>
    public ReadOnlySpan<byte> Raw => _csv.RawRecord;

    /// <summary>Number of fields.</summary>
    public int FieldCount => _cutter?.Count ?? _csv.FieldCount;

    /// <summary>Whether the row holds nothing.</summary>
    public bool IsBlank => Raw.IndexOfAnyExcept(_blanks) < 0;

    /// <summary>Whether marks stand between fields.</summary>
    public bool IsCutAtMarks => _cutter is null;

    /// <summary>Whether the row's fields are what stands between its delimiters: it is cut at marks and holds no quote.</summary>
    public bool IsPlain => _cutter is null && !Raw.Contains(_quote);

    /// <summary>Whether the row is a comment.</summary>
    public bool IsComment => _comment != 0 && Raw.Length > 0 && Raw[0] == _comment;

    /// <summary>Whether a quote was still open at the end of the file.</summary>
    public bool RunsToTheEnd => _malformed == CsvMalformedReason.UnterminatedQuote;

    /// <summary>Moves to the next row.</summary>
    /// <exception cref="CsvFormatException">The row is longer than <see cref="TextLimits.RowBytes"/>.</exception>
    public bool Next()
    {
        _malformed = null;
        bool read = _csv.Read();
        _isCut = !read || _cutter is null || _cutter.Cut(_csv.RawRecord);
        return read;
    }

    /// <summary>The value of a field, 0-based, without quotes and blanks around them.</summary>
    public ReadOnlySpan<byte> Field(int index) => _cutter is null ? _csv.GetSpan(index) : CellText.Trim(_cutter.Field(_csv.RawRecord, index));

    /// <summary>What is wrong with the row as text.</summary>
    public RowFault Fault()
    {
        ReadOnlySpan<byte> raw = Raw;
        if (!Utf8.IsValid(raw) || raw.Contains((byte)0) || (_transcoded && raw.IndexOf(Replacement) >= 0))
        {
            return RowFault.Bytes;
        }

        if (_malformed is not null || !_isCut)
        {
            return RowFault.Quotes;
        }

        return raw.Length > TextLimits.FieldBytes && HasLongField() ? RowFault.FieldTooLong : RowFault.None;
    }

    /// <inheritdoc/>
    public void Dispose() => _csv.Dispose();

    private bool HasLongField()
    {
        for (int i = 0; i < FieldCount; i++)
        {
            if (Field(i).Length > TextLimits.FieldBytes)
            {
                return true;
            }
        }

        return false;
    }

    private CsvReaderOptions Options(DialectSettings dialect, Encoding encoding, bool linesInQuotes) => new()
    {
        Separator = _cutter is null ? dialect.Delimiter : NoSeparator,
        Quote = _cutter is null ? dialect.QuoteChar : NoQuote,
        HasHeader = false,
        SkipEmptyLines = false,
        TrackLineNumbers = true,
        TrimWhitespace = _cutter is null,
        AllowLineBreaksInQuotes = linesInQuotes,
        MaxRecordSize = TextLimits.RowBytes,
        Encoding = _transcoded ? encoding : null,
        OnMalformedRecord = record => _malformed = record.Reason,
    };
}
