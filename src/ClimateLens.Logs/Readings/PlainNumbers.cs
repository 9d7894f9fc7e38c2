using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// The numbers of a row that holds no quotes, cut and read in one pass over its bytes: nearly every cell of nearly every export is one.
/// A cell that is anything else stays NaN and is read by itself, so that this way and the longer one agree on every cell.
/// </summary>
internal sealed class PlainNumbers
{
    private readonly byte _delimiter;
    private readonly (bool IsWanted, byte Mark, byte Other)[] _fields;
    private readonly double[] _numbers;

    /// <summary>Looks at the fields that columns read.</summary>
    /// <param name="delimiter">What stands between fields.</param>
    /// <param name="columns">The columns.</param>
    public PlainNumbers(byte delimiter, ReadingColumn[] columns)
    {
        _delimiter = delimiter;
        int last = columns.Length == 0 ? -1 : columns.Max(column => column.Field);
        _fields = new (bool, byte, byte)[last + 1];
        _numbers = new double[last + 1];
        foreach (var field in columns.Where(column => column.Field >= 0).GroupBy(column => column.Field, column => (column.Reader.Format.DecimalByte, column.Reader.Format.OtherDecimalByte)))
        {
            // Where columns read one field by different marks, each has to read it for itself.
            (byte mark, byte other) = field.First();
            _fields[field.Key] = (field.Distinct().Count() == 1, InField(mark), InField(other));
        }
    }

    /// <summary>The number of a field; NaN where the cell is no plain number or was not looked at.</summary>
    public double this[int field] => _numbers[field];

    /// <summary>Reads the current row.</summary>
    public void Read(ExportTable table)
    {
        if (table.IsPlain)
        {
            Read(table.Raw);
        }
        else
        {
            Array.Fill(_numbers, double.NaN);
        }
    }

    /// <summary>A mark as it can stand in a field without quotes, where the delimiter cannot; a NUL stands in no sound row.</summary>
    private byte InField(byte mark) => mark == _delimiter ? (byte)0 : mark;

    private void Read(ReadOnlySpan<byte> row)
    {
        byte delimiter = _delimiter;
        double[] numbers = _numbers;
        int at = 0;
        for (int f = 0; f < _fields.Length; f++)
        {
            (bool isWanted, byte mark, byte other) = _fields[f];
            bool isNumber = NumberCell.TryScanPlain(row, ref at, mark, other, out double number) && isWanted && (at == row.Length || row[at] == delimiter);
            numbers[f] = isNumber ? number : double.NaN;
            if (!isNumber)
            {
                int rest = row[at..].IndexOf(delimiter);
                at = rest < 0 ? row.Length : at + rest;
            }

            at += at < row.Length ? 1 : 0;
        }
    }
}
