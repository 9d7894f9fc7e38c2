using System.Text;
using System.Text.Unicode;
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
    private readonly RowReader _rows;
    private readonly DialectSettings _dialect;
    private readonly SetAsideLog _aside;
    private readonly RowCounts _counts;
    private byte[] _header = [];
    private bool _onFirst;

    private ExportTable(RowReader rows, DialectSettings dialect, SetAsideLog aside, RowCounts counts)
    {
        _rows = rows;
        _dialect = dialect;
        _aside = aside;
        _counts = counts;
    }

    /// <summary>Finds columns by name or position.</summary>
    public ColumnFinder Columns { get; private set; } = new("", [], 0, null);

    /// <summary>Number of fields that a row must have.</summary>
    public int FieldCount { get; private set; }

    /// <summary>1-based line of the row.</summary>
    public int Line => _rows.Line;

    /// <summary>The row as it stands in the file.</summary>
    public ReadOnlySpan<byte> Raw => _rows.Raw;

    /// <summary>Reads up to the first data row; null when there is no header where there should be one.</summary>
    public static ExportTable? Open(OpenedExport export, DialectSettings dialect, bool linesInQuotes, SetAsideLog aside, RowCounts counts)
    {
        var table = new ExportTable(new RowReader(export.Stream, dialect, export.Encoding, linesInQuotes), dialect, aside, counts);
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

    private bool ReadHeader()
    {
        while (_rows.Next())
        {
            if (_rows.Line >= _dialect.DataRow && _dialect.HeaderRow == 0 && !_rows.IsBlank && !_rows.IsComment)
            {
                FieldCount = _rows.FieldCount;
                Columns = new ColumnFinder(_aside.File, [], FieldCount, null);
                _onFirst = true;
                return true;
            }

            if (_rows.Line == _dialect.HeaderRow && !_rows.IsBlank)
            {
                TakeHeader();
                return true;
            }
        }

        if (_dialect.HeaderRow > 0)
        {
            _aside.Problems.Add(ProblemCodes.NoHeader.In(_aside.File, null, null, $"no names in row {_dialect.HeaderRow}", "column names"));
        }

        return _dialect.HeaderRow == 0;
    }

    private void TakeHeader()
    {
        var names = new string[_rows.FieldCount];
        for (int i = 0; i < names.Length; i++)
        {
            names[i] = Encoding.UTF8.GetString(Cells.CellText.Trim(_rows.Field(i)));
        }

        _header = _rows.Raw.ToArray();
        FieldCount = names.Length;
        Columns = new ColumnFinder(_aside.File, names, names.Length, _rows.Line);
        if (!Utf8.IsValid(_header))
        {
            _aside.Problems.Add(ProblemCodes.Bytes.In(_aside.File, _rows.Line, null, "column names with bytes that are no UTF-8", _dialect.Encoding));
        }
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

        return HasAllFields() && !IsHeaderAgain();
    }

    private bool HasAllFields()
    {
        int extra = _rows.FieldCount;
        while (extra > FieldCount && _rows.Field(extra - 1).Length == 0)
        {
            extra--; // a mark at the end of each row makes an empty field that no header names
        }

        if (extra == FieldCount)
        {
            return true;
        }

        SetAside(ProblemCodes.Fields, null, Encoding.UTF8.GetBytes($"{_rows.FieldCount} fields"), $"{FieldCount} fields");
        return false;
    }

    private bool IsHeaderAgain()
    {
        if (_header.Length == 0 || !Raw.SequenceEqual(_header))
        {
            return false;
        }

        SetAside(ProblemCodes.HeaderAgain, null, Raw, "data");
        return true;
    }
}
