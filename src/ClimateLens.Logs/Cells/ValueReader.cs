using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Cells;

/// <summary>What a cell turned out to be.</summary>
internal enum CellKind
{
    /// <summary>A value.</summary>
    Value,

    /// <summary>Empty, or a code for "no value" that the nursery file names.</summary>
    Missing,

    /// <summary>A text that says "no value" by itself: counts as missing, and is counted.</summary>
    Word,

    /// <summary>A value, kept, but none that its channel can have: perhaps a code.</summary>
    Impossible,

    /// <summary>A number with the other decimal mark than the nursery file gives: kept aside.</summary>
    OtherDecimal,

    /// <summary>A number with the name of another unit than the nursery file gives: kept aside.</summary>
    OtherUnit,

    /// <summary>None of these: kept aside.</summary>
    NotRead,
}

/// <summary>Reads the cells of one column into the unit of its quantity.</summary>
/// <param name="unit">Unit of the file.</param>
/// <param name="format">Marks of the file's numbers.</param>
/// <param name="missing">Codes for "no value".</param>
/// <param name="low">Lowest value that the channel can have. [SI unit of the quantity]</param>
/// <param name="high">Highest value that the channel can have. [SI unit of the quantity]</param>
internal sealed class ValueReader(Unit unit, NumberFormat format, MissingCodes missing, double low = double.NegativeInfinity, double high = double.PositiveInfinity)
{
    private byte[] _lastWord = [];

    /// <summary>Whether numbers are values as they stand.</summary>
    public bool IsPlain { get; } = unit.Factor == 1 && unit.Offset == 0;

    /// <summary>Unit of the file.</summary>
    public Unit Unit => unit;

    /// <summary>Marks of the file's numbers.</summary>
    public NumberFormat Format => format;

    /// <summary>Codes for "no value" that are numbers.</summary>
    public IReadOnlyList<double> MissingNumbers => missing.Numbers;

    /// <summary>Lowest value that the channel can have. [SI unit of the quantity]</summary>
    public double Low => low;

    /// <summary>Highest value that the channel can have. [SI unit of the quantity]</summary>
    public double High => high;

    /// <summary>Whether the column takes on and off as words.</summary>
    public bool IsSwitch => unit.Quantity == Quantity.OnOff;

    /// <summary>What a value looks like, for messages.</summary>
    public string Expected => IsSwitch ? "0 or 1, on or off, true or false, yes or no" : format.Example;

    /// <summary>Reads one cell; NaN unless it is a value, possible or not.</summary>
    public CellKind Read(ReadOnlySpan<byte> cell, out double value)
    {
        value = double.NaN;
        cell = CellText.Trim(cell);
        if (missing.Contains(cell))
        {
            return CellKind.Missing;
        }

        if (!NumberCell.TryReadPlain(cell, format, out double number))
        {
            CellKind kind = ReadOdd(cell, out number);
            if (kind != CellKind.Value)
            {
                return kind;
            }
        }

        return Read(number, out value);
    }

    /// <summary>Takes a cell that is a plain number, read by <see cref="NumberCell.TryScanPlain"/>.</summary>
    public CellKind Read(double number, out double value)
    {
        value = double.NaN;
        if (missing.Contains(number)) // a code that is a plain number is among the numbers, however it is spelt
        {
            return CellKind.Missing;
        }

        double si = IsPlain ? number : unit.ToSi(number);
        if (si >= low && si <= high)
        {
            value = si;
            return CellKind.Value;
        }

        if (IsSwitch || !double.IsFinite(si))
        {
            return CellKind.NotRead;
        }

        value = si;
        return CellKind.Impossible;
    }

    /// <summary>All that is no plain number.</summary>
    private CellKind ReadOdd(ReadOnlySpan<byte> cell, out double number)
    {
        ReadOnlySpan<byte> bare = CellText.Unwrap(cell);
        if (missing.Contains(bare))
        {
            number = double.NaN;
            return CellKind.Missing;
        }

        if (NumberCell.TryReadPlain(bare, format, out number) || NumberCell.TryReadOdd(bare, format, out number) || (IsSwitch && SwitchCell.TryRead(bare, out number)))
        {
            number = IsSwitch && unit.Factor != 1 && !IsDigits(bare) ? unit.FromSi(number) : number;
            return CellKind.Value;
        }

        return cell.SequenceEqual(_lastWord) ? CellKind.Word : WithUnit(cell, bare, out number);
    }

    private CellKind WithUnit(ReadOnlySpan<byte> cell, ReadOnlySpan<byte> bare, out double number)
    {
        (int length, Unit? named) = UnitSuffix.Of(bare, unit.Quantity);
        ReadOnlySpan<byte> amount = CellText.Trim(bare[..length]);
        if (named is not null && NumberCell.TryRead(amount, format, out number))
        {
            return named.IsLike(unit) || named.Code.Length == 0 ? CellKind.Value : CellKind.OtherUnit;
        }

        number = double.NaN;
        if (MissingWords.Contains(bare) || (named is not null && MissingWords.Contains(amount)))
        {
            _lastWord = cell.ToArray();
            return CellKind.Word;
        }

        return !format.Either && NumberCell.TryRead(amount, format.WithEither(), out _) ? CellKind.OtherDecimal : CellKind.NotRead;
    }

    private static bool IsDigits(ReadOnlySpan<byte> text) => text.IndexOfAnyInRange((byte)'0', (byte)'9') >= 0;
}
