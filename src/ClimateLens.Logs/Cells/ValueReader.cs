using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Cells;

/// <summary>What a cell turned out to be.</summary>
internal enum CellKind
{
    /// <summary>A value.</summary>
    Value,

    /// <summary>Empty, or a code for "no value".</summary>
    Missing,

    /// <summary>Neither: kept aside.</summary>
    NotRead,
}

/// <summary>Reads the cells of one column into the unit of its quantity.</summary>
/// <param name="unit">Unit of the file.</param>
/// <param name="format">Marks of the file's numbers.</param>
/// <param name="missing">Codes for "no value".</param>
internal sealed class ValueReader(Unit unit, NumberFormat format, MissingCodes missing)
{
    private readonly bool _plain = unit.Factor == 1 && unit.Offset == 0;

    /// <summary>Whether the column takes on and off as words.</summary>
    public bool IsSwitch => unit.Quantity == Quantity.OnOff;

    /// <summary>What a value looks like, for messages.</summary>
    public string Expected => IsSwitch ? "0 or 1, on or off, true or false, yes or no" : format.Example;

    /// <summary>Reads one cell; NaN unless it is a value.</summary>
    public CellKind Read(ReadOnlySpan<byte> cell, out double value)
    {
        value = double.NaN;
        cell = CellText.Trim(cell);
        if (missing.Contains(cell))
        {
            return CellKind.Missing;
        }

        if (NumberCell.TryRead(cell, format, out double number) || (IsSwitch && SwitchCell.TryRead(cell, out number)))
        {
            if (missing.Contains(number))
            {
                return CellKind.Missing;
            }

            value = _plain ? number : unit.ToSi(number);
            return double.IsFinite(value) ? CellKind.Value : CellKind.NotRead;
        }

        return CellKind.NotRead;
    }
}
