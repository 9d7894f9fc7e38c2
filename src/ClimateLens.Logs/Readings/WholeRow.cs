using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ClimateLens.Logs.Cells;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Turns the plain numbers of a row into values of all columns at once, and tells which of them are to be looked at one by one: those that
/// are no plain number, a code for "no value", or no value that their channel can have.
/// </summary>
internal sealed class WholeRow
{
    private readonly int[] _fields;
    private readonly double[] _codes;
    private readonly double[] _factors;
    private readonly double[] _offsets;
    private readonly double[] _lows;
    private readonly double[] _highs;
    private readonly double[] _values;
    private readonly double[] _sound;

    private WholeRow(ReadingColumn[] columns)
    {
        _fields = [.. columns.Select(column => column.Field)];
        _codes = [.. columns.SelectMany(column => column.Reader.MissingNumbers).Distinct()];
        _factors = Padded(columns, reader => reader.Unit.Factor, 1);
        _offsets = Padded(columns, reader => reader.IsPlain ? -0.0 : reader.Unit.Offset, 0); // added to -0.0, this leaves it
        _lows = Padded(columns, reader => reader.Low, double.NegativeInfinity);
        _highs = Padded(columns, reader => reader.High, double.PositiveInfinity);
        _values = new double[_factors.Length];
        _sound = new double[_factors.Length];
    }

    /// <summary>For the columns of a file; null where each row asks which of them it feeds, or how.</summary>
    public static WholeRow? Of(ReadingColumn[] columns, PlainNumbers numbers)
        => Array.Exists(columns, column => column.Field < 0 || !numbers.IsWanted(column.Field) || !column.Where.IsEmpty || !column.Later.IsEmpty) ? null : new WholeRow(columns);

    /// <summary>Reads a row; true when all its cells are values.</summary>
    /// <param name="numbers">Its plain numbers.</param>
    /// <param name="values">Receives the values by column.</param>
    public bool Read(PlainNumbers numbers, Span<double> values)
    {
        for (int c = 0; c < _fields.Length; c++)
        {
            _values[c] = numbers.NumberOf(_fields[c]);
        }

        bool areSound = Convert();
        _values.AsSpan(0, _fields.Length).CopyTo(values);
        return areSound;
    }

    /// <summary>Whether the cell of a column is a value, as was found by <see cref="Read"/>.</summary>
    public bool IsValue(int column) => BitConverter.DoubleToInt64Bits(_sound[column]) != 0;

    private bool Convert()
    {
        Span<Vector128<double>> row = Pairs(_values), sound = Pairs(_sound);
        ReadOnlySpan<Vector128<double>> factors = Pairs(_factors), offsets = Pairs(_offsets), lows = Pairs(_lows), highs = Pairs(_highs);
        Vector128<double> all = Vector128<double>.AllBitsSet;
        for (int i = 0; i < row.Length; i++)
        {
            Vector128<double> number = row[i];
            row[i] = (number * factors[i]) + offsets[i];
            Vector128<double> good = Vector128.GreaterThanOrEqual(row[i], lows[i]) & Vector128.LessThanOrEqual(row[i], highs[i]); // NaN is neither
            foreach (double code in _codes)
            {
                good = Vector128.AndNot(good, Vector128.Equals(number, Vector128.Create(code)));
            }

            sound[i] = good;
            all &= good;
        }

        return all.AsInt64() == Vector128<long>.AllBitsSet;
    }

    private static Span<Vector128<double>> Pairs(double[] values) => MemoryMarshal.Cast<double, Vector128<double>>(values.AsSpan());

    private static double[] Padded(ReadingColumn[] columns, Func<ValueReader, double> of, double padding)
    {
        double[] padded = new double[(columns.Length + 1) / 2 * 2];
        Array.Fill(padded, padding);
        for (int c = 0; c < columns.Length; c++)
        {
            padded[c] = of(columns[c].Reader);
        }

        return padded;
    }
}
