using System.Text;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Cells;

/// <summary>Finds the unit that a cell writes behind its number, as in "21.5 °C" or "85%".</summary>
internal static class UnitSuffix
{
    private const int LongestUnit = 24;

    /// <summary>Length of what stands before the unit, and the unit; null when no unit of the quantity stands there.</summary>
    public static (int Length, Unit? Named) Of(ReadOnlySpan<byte> cell, Quantity quantity)
    {
        int first = StartOf(cell), blank = cell.LastIndexOf((byte)' ');
        (int Length, Unit? Named) found = At(cell, first, quantity);
        return found.Named is null && blank > 0 ? At(cell, blank, quantity) : found; // a blank before the unit, as in "NaN °C"
    }

    private static (int Length, Unit? Named) At(ReadOnlySpan<byte> cell, int start, Quantity quantity)
    {
        if (start == cell.Length || cell.Length - start > LongestUnit)
        {
            return (cell.Length, null);
        }

        string text = Encoding.UTF8.GetString(CellText.Trim(cell[start..]));
        if (UnitCatalogue.TryGet(quantity, text, out Unit? unit))
        {
            return (start, unit);
        }

        // A bare degree sign names no scale and contradicts none.
        return UnitText.Key(text) == "°" && quantity is Quantity.Temperature ? (start, new Unit("", quantity, 1)) : (cell.Length, null);
    }

    /// <summary>Where the unit starts: at the first sign that is no part of a number, where the E of an exponent is one.</summary>
    private static int StartOf(ReadOnlySpan<byte> cell)
    {
        for (int i = 0; i < cell.Length;)
        {
            Rune.DecodeFromUtf8(cell[i..], out Rune rune, out int bytes);
            if (!IsPartOfNumber(rune) && !IsExponent(cell, i))
            {
                return i;
            }

            i += bytes;
        }

        return cell.Length;
    }

    private static bool IsExponent(ReadOnlySpan<byte> cell, int i)
        => cell[i] is (byte)'e' or (byte)'E' && i > 0 && i + 1 < cell.Length
            && char.IsAsciiDigit((char)cell[i - 1])
            && (char.IsAsciiDigit((char)cell[i + 1]) || cell[i + 1] is (byte)'-' or (byte)'+');

    /// <summary>Digits, marks, blanks and signs; special blanks, apostrophes and minus signs too.</summary>
    private static bool IsPartOfNumber(Rune rune) => rune.Value < 'A'
        ? rune.Value != '%'
        : CellText.IsSpecialBlank(rune) || rune.Value is '\u2212' or '\u2013' or '\u2014' or '\u2019';
}
