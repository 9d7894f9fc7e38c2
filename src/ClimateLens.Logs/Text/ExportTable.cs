using System.Buffers;
using System.Text;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Settings;
using CsvHelper;

namespace ClimateLens.Logs.Text;

/// <summary>
/// The data rows of one export file: finds the header, passes over blank rows and comments, sets aside what is no
/// sound row, and counts.
/// </summary>
internal sealed class ExportTable : IDisposable
{
    private static readonly SearchValues<byte> OfNumbers = SearchValues.Create("0123456789.,"u8);

    private const int RowsToAgree = 8;

    private readonly RowReader _rows;
    private readonly DialectSettings _dialect;
    private readonly SetAsideLog _aside;
    private readonly RowCounts _counts;
    private readonly FieldRef[] _wanted; // without these no row can be read: a header in the middle of the file is judged by them
    private readonly string[] _values;
    private TableHeader _header = new();
    private bool _onFirst;
    private bool _isStrange;
    private int _headerRowsSeen;
    private int _endMarks;
    private int _alike; // rows before that have as many

    private ExportTable(OpenedExport opened, ExportSettings export, bool linesInQuotes, SetAsideLog aside, RowCounts counts)
    {
        _rows = new RowReader(opened.Stream, opened.Dialect, opened.Encoding, linesInQuotes);
        _dialect = opened.Dialect;
        _wanted = WantedFields.Of(export);
        _values = WantedFields.Values(export);
        _aside = aside;
        _counts = counts;
        HasIsoTimes = opened.IsWorkbook;
    }

    /// <summary>Finds columns by name or position.</summary>
    public ColumnFinder Columns { get; private set; } = new("", [], 0, null);

    /// <summary>Whether its times may be ISO 8601 whatever the format of the export.</summary>
    public bool HasIsoTimes { get; }

    /// <summary>Number of fields that a row must have.</summary>
    public int FieldCount { get; private set; }

    /// <summary>How often the columns were named anew in the middle of the file; where it changes they are to be bound again.</summary>
    public int HeadersTaken { get; private set; }

    /// <summary>1-based line of the row.</summary>
    public int Line => _rows.Line;

    /// <summary>1-based line of the last row that was seen, of whatever kind.</summary>
    public int LastLine { get; private set; }

    /// <summary>Line of the last row that was set aside for being a piece of a number and nothing more; 0 for none.</summary>
    public int PieceLine { get; private set; }

    /// <summary>Number of fields of the row.</summary>
    public int Fields => _rows.FieldCount;

    /// <summary>The row as it stands in the file.</summary>
    public ReadOnlySpan<byte> Raw => _rows.Raw;

    /// <summary>Whether the row's fields are what stands between its delimiters, byte for byte but for blanks around them.</summary>
    public bool IsPlain => _rows.IsPlain;

    /// <summary>What stands between fields; says nothing where widths or blanks part them.</summary>
    public byte Delimiter => (byte)_dialect.Delimiter;

    /// <summary>Reads up to the first data row; null when there is no header where there should be one.</summary>
    public static ExportTable? Open(OpenedExport opened, ExportSettings export, bool linesInQuotes, SetAsideLog aside, RowCounts counts)
    {
        var table = new ExportTable(opened, export, linesInQuotes, aside, counts);
        if (table.ReadHeader())
        {
            return table;
        }

        table.Dispose();
        return null;
    }

    /// <summary>The value of a field, 0-based.</summary>
    public ReadOnlySpan<byte> Field(int index) => _rows.Field(index);

    /// <summary>Moves to the next sound row.</summary>
    /// <exception cref="CsvFormatException">A row is longer than the limit.</exception>
    public bool Next()
    {
        while (_onFirst || _rows.Next())
        {
            _onFirst = false;
            LastLine = _rows.Line;
            if (_rows.Line < _dialect.DataRow || _rows.IsComment)
            {
                continue;
            }

            _counts.Read++;
            if (_rows.IsBlank)
            {
                _counts.Blank++;
            }
            else if (IsSound())
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Sets the current row aside.</summary>
    public void SetAside(ProblemCode code, int? column, ReadOnlySpan<byte> found, string expected)
    {
        _counts.SetAside++;
        _aside.AddRow(code, Line, column, found, expected, Raw);
    }

    /// <inheritdoc/>
    public void Dispose() => _rows.Dispose();

    /// <summary>Sets aside the current row, whose time cannot be read: as a header, as a row of totals, or for its time.</summary>
    public void SetTimeAside(ProblemCode code, int column, ReadOnlySpan<byte> found, string expected)
    {
        if (!TakeNewHeader() && !IsSummary())
        {
            SetAside(code, column, found, expected);
        }
    }

    private bool ReadHeader()
    {
        while (_onFirst || _rows.Next())
        {
            _onFirst = false;
            if (_rows.Line >= _dialect.DataRow && _dialect.HeaderRow == 0 && !_rows.IsBlank && !_rows.IsComment)
            {
                FieldCount = _rows.FieldCount;
                Columns = new ColumnFinder(_aside.File, [], FieldCount, null);
                _onFirst = true;
                return true;
            }

            bool isLast = _rows.Line == _dialect.HeaderRow;
            if (_dialect.HeaderRows.Contains(_rows.Line) || (isLast && !_rows.IsBlank))
            {
                AddHeaderRow();
                if (isLast)
                {
                    TakeHeader();
                    return true;
                }
            }
        }

        if (_dialect.HeaderRow > 0)
        {
            _aside.Problems.Add(ProblemCodes.NoHeader.In(_aside.File, null, null, $"no names in row {_dialect.HeaderRow}", "column names"));
        }

        return _dialect.HeaderRow == 0;
    }

    /// <summary>Adds the current row to the header, with the lines behind it where a line end stands in a quoted name.</summary>
    private void AddHeaderRow()
    {
        using var names = new QuotedHeader(_rows, _dialect);
        _header.Add(names.Row);
        _onFirst = names.ReadsOn;
    }

    private void TakeHeader()
    {
        FieldCount = _header.Names.Length;
        _alike = 0;
        Columns = new ColumnFinder(_aside.File, _header.Names, FieldCount, _rows.Line);
        if (!_header.IsText)
        {
            _aside.Problems.Add(ProblemCodes.Bytes.In(_aside.File, _rows.Line, null, "column names with bytes that are no UTF-8", _dialect.Encoding));
        }
    }

    /// <summary>
    /// Takes the current row for the names of the columns, where it is that: a logger whose set-up was changed writes a new header
    /// into the same file. Where what is wanted cannot be found in it, the rows below are set aside.
    /// </summary>
    private bool TakeNewHeader()
    {
        if (!_header.LooksLike(_rows))
        {
            return false;
        }

        var fresh = new TableHeader();
        fresh.Add(_rows);
        _isStrange = _header.HasSeveralRows || !fresh.Serves(_wanted, _header) || (_header.HasAny(_values) && !fresh.HasAny(_values));
        SetAside(_isStrange ? ProblemCodes.HeaderStrange : ProblemCodes.HeaderChanged, null, Raw, _isStrange ? "the columns that are read, or the same header as above" : "the same header as above");
        if (!_isStrange)
        {
            _header = fresh;
            TakeHeader();
            HeadersTaken++;
        }

        return true;
    }

    private bool IsSound()
    {
        RowFault fault = _rows.Fault();
        if (fault != RowFault.None)
        {
            ProblemCode code = fault switch
            {
                RowFault.Bytes => ProblemCodes.Bytes,
                RowFault.Quotes => ProblemCodes.Quotes,
                _ => ProblemCodes.FieldTooLong,
            };
            SetAside(code, null, Raw, fault switch
            {
                RowFault.Bytes => $"text in {_dialect.Encoding}",
                RowFault.Quotes => "quotes in pairs around whole fields",
                _ => $"at most {TextLimits.FieldBytes} bytes in a field",
            });
            return false;
        }

        return !IsHeaderAgain() && HasAllFields() && !IsBelowStrangeHeader();
    }

    /// <summary>Whether the row repeats the header, or a row of it. Where one that stands in several rows begins again, all of them must follow.</summary>
    private bool IsHeaderAgain()
    {
        int place = _header.PlaceOf(Raw);
        int expected = _headerRowsSeen;
        _headerRowsSeen = place >= 0 && _header.HasSeveralRows ? place + 1 : 0;
        if (place >= 0)
        {
            _isStrange = place > 0 && _isStrange;
            SetAside(ProblemCodes.HeaderAgain, null, Raw, "data");
            return true;
        }

        if (expected > 0 && expected < _header.RowCount)
        {
            _isStrange = true;
            SetAside(ProblemCodes.HeaderStrange, null, Raw, "the same header as above");
            return true;
        }

        return false;
    }

    private bool IsBelowStrangeHeader()
    {
        if (!_isStrange || TakeNewHeader())
        {
            return _isStrange;
        }

        SetAside(ProblemCodes.HeaderStrange, null, Raw, "the columns of the header at the top");
        return true;
    }

    private bool HasAllFields()
    {
        if (_rows.FieldCount == FieldCount ? EndsAsBefore(0) : EndsInMarks() && EndsAsBefore(_rows.FieldCount - FieldCount))
        {
            return true;
        }

        PieceLine = _rows.FieldCount == 1 && IsPieceOfNumber(_rows.Field(0)) ? _rows.Line : PieceLine;
        if (!TakeNewHeader() && !IsSummary())
        {
            SetAside(_isStrange ? ProblemCodes.HeaderStrange : ProblemCodes.Fields, null, Encoding.UTF8.GetBytes($"{_rows.FieldCount} fields"), $"{FieldCount} fields");
        }

        return false;
    }

    /// <summary>Whether nothing but empty fields stands behind those that the header names.</summary>
    private bool EndsInMarks()
    {
        int filled = _rows.FieldCount;
        while (filled > FieldCount && _rows.Field(filled - 1).Length == 0)
        {
            filled--;
        }

        return filled == FieldCount;
    }

    /// <summary>
    /// A mark at the end of each row makes an empty field that no header names. Where many rows agree how many there are, one with more or
    /// fewer is torn: a mark in its middle is doubled or lost, or its end is.
    /// </summary>
    private bool EndsAsBefore(int marks)
    {
        bool agreed = _alike >= RowsToAgree;
        bool sound = !agreed || marks == _endMarks;
        _alike = marks == _endMarks ? _alike + 1 : 0;
        _endMarks = marks;
        return sound;
    }

    private static bool IsPieceOfNumber(ReadOnlySpan<byte> field) => field.Length is > 0 and < 8 && field.IndexOfAnyExcept(OfNumbers) < 0;

    /// <summary>Sets the row aside where it holds totals or averages.</summary>
    private bool IsSummary()
    {
        if (!SummaryRows.IsOne(this))
        {
            return false;
        }

        SetAside(ProblemCodes.SummaryRow, null, Raw, "readings");
        return true;
    }
}
