using System.Buffers;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Learns how many decimals the numbers of each field have. Where all have the same, a cell with more or fewer is odd, and where there were
/// numbers so are two that ran into each other (<c>20.0.39</c>): so a row is known that lost a piece in its middle.
/// </summary>
internal sealed class CellForms
{
    private const int Varied = -2;
    private const int Unknown = -1;

    // A program that leaves out last zeros writes a tenth of its numbers with fewer decimals, and whole numbers as a tenth of those that
    // have a decimal: it shows within so many different numbers.
    private const int EnoughNumbers = 100;
    private const int EnoughWholes = 30;

    // Two last zeros show that it does not leave them out.
    private const int EnoughZeros = 2;

    // So many odd cells are no accident.
    private const int MostOdd = 4;
    private const int FewNumbers = 5;

    private static readonly SearchValues<byte> OfNumbersAndTimes = SearchValues.Create("0123456789.,:-+/ TZ"u8);
    private static readonly NumberFormat Either = new('.', null, either: true);

    private readonly PlainNumbers _row;
    private readonly int[][] _columns;
    private readonly int[] _decimals;
    private readonly int[] _numbers;
    private readonly HashSet<double>[] _different;
    private readonly int[] _zeros;
    private readonly int[] _oddCells;
    private readonly List<int> _learning;
    private ulong _sound;
    private int _odd = -1;

    /// <summary>Looks at the fields of a table.</summary>
    /// <param name="row">The numbers of its current row.</param>
    /// <param name="columns">The columns that read them.</param>
    public CellForms(PlainNumbers row, ReadingColumn[] columns)
    {
        _row = row;
        _columns = [.. Enumerable.Range(0, row.Fields).Select(f => Enumerable.Range(0, columns.Length).Where(c => columns[c].Field == f).ToArray())];
        _decimals = [.. Enumerable.Repeat(Unknown, row.Fields)];
        _numbers = new int[row.Fields];
        _different = [.. Enumerable.Range(0, row.Fields).Select(_ => new HashSet<double>())];
        _zeros = new int[row.Fields];
        _oddCells = new int[row.Fields];
        _learning = [.. Enumerable.Range(0, row.Fields)];
    }

    /// <summary>Looks at the current row; answers with the field whose cell is odd, or -1.</summary>
    /// <param name="table">The table.</param>
    /// <param name="values">The row's values by column.</param>
    public int OddField(ExportTable table, double[] values)
    {
        int odd = _row.Form == _sound ? -1 : Find(table, values);
        if (odd < 0)
        {
            _sound = _row.Form;
            Learn();
        }
        else if (odd == _odd || ++_oddCells[odd] == MostOdd)
        {
            _decimals[odd] = Varied; // twice running: so the file is written from here on
        }

        _odd = odd;
        return odd;
    }

    /// <summary>Whether a number of the current row has all the decimals that its field has, so that nothing of its end is lost.</summary>
    public bool IsWhole(int field) => field < _decimals.Length && IsFixed(field) && _decimals[field] > 0 && _row.Decimals(field) == _decimals[field];

    private bool IsFixed(int field) => _decimals[field] >= 0 && (_zeros[field] >= EnoughZeros || _different[field].Count >= (_decimals[field] == 0 ? EnoughWholes : EnoughNumbers));

    private int Find(ExportTable table, double[] values)
    {
        for (int f = 0; f < _decimals.Length; f++)
        {
            int decimals = _row.Decimals(f);
            bool odd = decimals >= 0 ? IsFixed(f) && decimals != _decimals[f] && !IsMissing(f, values) && !IsCode(table.Field(f)) : _numbers[f] >= FewNumbers && RanTogether(table.Field(f));
            if (odd)
            {
                return f;
            }
        }

        return -1;
    }

    private void Learn()
    {
        for (int i = _learning.Count - 1; i >= 0; i--)
        {
            int f = _learning[i];
            int decimals = _row.Decimals(f);
            if (decimals < 0)
            {
                continue;
            }

            double number = _row.NumberOf(f);
            _numbers[f]++;
            _different[f].Add(number);
            _zeros[f] += decimals > 0 && Math.Round(number * Math.Pow(10, decimals)) % 10 == 0 ? 1 : 0;
            _decimals[f] = _decimals[f] == Unknown || _decimals[f] == decimals ? decimals : Varied;
            if ((_decimals[f] == Varied || IsFixed(f)) && _numbers[f] >= FewNumbers)
            {
                _learning.RemoveAt(i);
            }
        }
    }

    /// <summary>Whether columns read the field, and none took a value from it: the number is a code that the export names.</summary>
    private bool IsMissing(int field, double[] values) => _columns[field].Length > 0 && Array.TrueForAll(_columns[field], c => double.IsNaN(values[c]));

    /// <summary>A code for "no value" is written as it is, whatever the decimals of its column.</summary>
    private static bool IsCode(ReadOnlySpan<byte> cell) => NumericCodes.IsWellKnown(System.Text.Encoding.UTF8.GetString(CellText.Trim(cell)));

    /// <summary>Digits and marks, and no number: two of them, or one and a time.</summary>
    private static bool RanTogether(ReadOnlySpan<byte> cell)
    {
        ReadOnlySpan<byte> text = CellText.Trim(cell);
        return text.IndexOfAnyInRange((byte)'0', (byte)'9') >= 0 && text.IndexOfAnyExcept(OfNumbersAndTimes) < 0 && !NumberCell.TryReadOdd(text, Either, out _);
    }
}
