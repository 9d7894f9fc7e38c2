using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// The numbers of a row, cut and read in one pass over its bytes where it holds no quotes: nearly every cell of nearly every export is one.
/// A cell that is anything else stays NaN and is read by itself, so that this way and the longer one agree on every cell.
/// </summary>
internal sealed class PlainNumbers
{
    private const ulong FormBase = 23; // more than the decimals that a number may have

    private readonly byte _delimiter;
    private readonly (bool IsWanted, byte Mark, byte Other)[] _fields;
    private readonly (byte Mark, byte Other)[] _inQuotes;
    private readonly double[] _numbers;
    private readonly sbyte[] _decimals;
    private readonly int[] _ends;

    /// <summary>Looks at the fields that columns read.</summary>
    /// <param name="delimiter">What stands between fields.</param>
    /// <param name="columns">The columns.</param>
    public PlainNumbers(byte delimiter, ReadingColumn[] columns)
    {
        _delimiter = delimiter;
        int last = columns.Length == 0 ? -1 : columns.Max(column => column.Field);
        _inQuotes = [.. Enumerable.Repeat(columns.Select(column => Marks(column.Reader.Format)).FirstOrDefault(), last + 1)];
        bool[] wanted = new bool[last + 1];
        _numbers = new double[last + 1];
        _decimals = new sbyte[last + 1];
        _ends = new int[last + 1];
        foreach (var field in columns.Where(column => column.Field >= 0).GroupBy(column => column.Field, column => Marks(column.Reader.Format)))
        {
            // Where columns read one field by different marks, each has to read it for itself.
            _inQuotes[field.Key] = field.First();
            wanted[field.Key] = field.Distinct().Count() == 1;
        }

        _fields = [.. _inQuotes.Select((marks, f) => (wanted[f], InField(marks.Mark), InField(marks.Other)))];
    }

    /// <summary>Fields looked at: all up to the last that a column reads.</summary>
    public int Fields => _fields.Length;

    /// <summary>Stands for the decimals of all fields: rows with the same have the same decimals everywhere, but for rare chance.</summary>
    public ulong Form { get; private set; }

    /// <summary>Whether the columns that read a field agree on its marks.</summary>
    public bool IsWanted(int field) => _fields[field].IsWanted;

    /// <summary>The number of a field; NaN where the cell is no plain number or columns read it by different marks.</summary>
    public double this[int field] => _fields[field].IsWanted ? _numbers[field] : double.NaN;

    /// <summary>Digits behind the decimal mark of a field; -1 where the cell is no plain number.</summary>
    public int Decimals(int field) => _decimals[field];

    /// <summary>The number of a field, also where no column reads it.</summary>
    public double NumberOf(int field) => _numbers[field];

    /// <summary>Reads the current row.</summary>
    public void Read(ExportTable table)
    {
        Form = 0;
        if (table.IsPlain)
        {
            ReadRow(table.Raw);
        }
        else
        {
            ReadCells(table);
        }
    }

    private static (byte Mark, byte Other) Marks(NumberFormat format) => (format.DecimalByte, format.OtherDecimalByte);

    /// <summary>A mark as it can stand in a field without quotes, where the delimiter cannot; a NUL stands in no sound row.</summary>
    private byte InField(byte mark) => mark == _delimiter ? (byte)0 : mark;

    private void ReadRow(ReadOnlySpan<byte> row)
    {
        Cut(row);
        int start = 0;
        for (int f = 0; f < _ends.Length; f++)
        {
            (_, byte mark, byte other) = _fields[f];
            int end = _ends[f];
            bool isNumber = ShortNumber.TryRead(row, start, end, mark, other, out double number, out int decimals) || TryLong(row[start..end], mark, other, out number, out decimals);
            Keep(f, isNumber, number, decimals);
            start = Math.Min(end + 1, row.Length);
        }
    }

    /// <summary>Finds where the fields end; those that the row lacks end with it.</summary>
    private void Cut(ReadOnlySpan<byte> row)
    {
        Span<int> ends = _ends;
        ref byte first = ref MemoryMarshal.GetReference(row);
        int found = 0;
        int at = 0;
        for (; at <= row.Length - Vector128<byte>.Count; at += Vector128<byte>.Count)
        {
            uint marks = Vector128.Equals(Vector128.LoadUnsafe(ref first, (nuint)at), Vector128.Create(_delimiter)).ExtractMostSignificantBits();
            for (; marks != 0 && found < ends.Length; marks &= marks - 1)
            {
                ends[found++] = at + BitOperations.TrailingZeroCount(marks);
            }
        }

        for (; at < row.Length && found < ends.Length; at++)
        {
            if (row[at] == _delimiter)
            {
                ends[found++] = at;
            }
        }

        ends[found..].Fill(row.Length);
    }

    private static bool TryLong(ReadOnlySpan<byte> cell, byte mark, byte other, out double number, out int decimals)
    {
        int at = 0;
        return NumberCell.TryScanPlain(cell, ref at, mark, other, out number, out decimals) && at == cell.Length;
    }

    private void ReadCells(ExportTable table)
    {
        for (int f = 0; f < _fields.Length; f++)
        {
            ReadOnlySpan<byte> cell = f < table.Fields ? CellText.Trim(table.Field(f)) : [];
            (byte mark, byte other) = _inQuotes[f];
            Keep(f, TryLong(cell, mark, other, out double number, out int decimals), number, decimals);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Keep(int field, bool isNumber, double number, int decimals)
    {
        _numbers[field] = isNumber ? number : double.NaN;
        _decimals[field] = (sbyte)(isNumber ? decimals : -1);
        Form = (Form * FormBase) + (ulong)(isNumber ? decimals + 1 : 0);
    }
}
