using System.Globalization;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Reads a whole cell as a number, or not at all. "1,5" where the decimal mark is '.' is no number (the framework's
/// parsers would make 15 of it), nor are NaN, Infinity, hexadecimals, and numbers too large for a double.
/// </summary>
internal static class NumberCell
{
    private const ulong LargestExactMantissa = 1UL << 53;

    // Powers of ten up to 1e22 are exact doubles, so one product or quotient of an exact mantissa is rounded once:
    // correct to the last bit [CLINGER90].
    private static readonly double[] ExactPowers = [.. Enumerable.Range(0, 23).Select(n => double.Parse($"1e{n}", CultureInfo.InvariantCulture))];

    /// <summary>Reads <paramref name="cell"/>, which holds no surrounding blanks.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, NumberFormat format, out double value)
        => TryReadPlain(cell, format, out value) || TryReadOdd(cell, format, out value);

    /// <summary>The quick way for what nearly every cell is: sign, up to 19 digits, one decimal mark of one byte, no exponent.</summary>
    public static bool TryReadPlain(ReadOnlySpan<byte> cell, NumberFormat format, out double value)
    {
        int at = 0;
        return TryScanPlain(cell, ref at, format.DecimalByte, format.OtherDecimalByte, out value, out _) && at == cell.Length;
    }

    /// <summary>The slower way for all the rest: group marks, exponents, signs of other alphabets or at the end.</summary>
    public static bool TryReadOdd(ReadOnlySpan<byte> cell, NumberFormat format, out double value)
    {
        value = 0;
        Span<byte> canonical = stackalloc byte[NumberScan.LongestNumber];
        int length = new NumberScan(cell, format, canonical).Run();
        return length > 0
            && double.TryParse(canonical[..length], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    /// <summary>Reads such a number from a place in a row on, as far as it goes; what stands behind it is for the caller to look at.</summary>
    /// <param name="row">The row.</param>
    /// <param name="at">Where the number begins; then the place behind it.</param>
    /// <param name="mark">Decimal mark.</param>
    /// <param name="other">The other decimal mark where there are two, else the same.</param>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Digits behind its decimal mark.</param>
    public static bool TryScanPlain(ReadOnlySpan<byte> row, ref int at, byte mark, byte other, out double value, out int decimals)
    {
        int i = at;
        bool negative = i < row.Length && row[i] == (byte)'-';
        i += negative || (i < row.Length && row[i] == (byte)'+') ? 1 : 0;
        int first = i;
        int point = -1;
        ulong mantissa = 0;
        for (; i < row.Length; i++)
        {
            uint digit = (uint)(row[i] - '0');
            if (digit <= 9)
            {
                mantissa = (mantissa * 10) + digit;
            }
            else if (point < 0 && (row[i] == mark || row[i] == other))
            {
                point = i;
            }
            else
            {
                break;
            }
        }

        int digits = i - first - (point < 0 ? 0 : 1);
        decimals = point < 0 ? 0 : i - point - 1;
        (at, value) = (i, 0);
        if (digits is 0 or > 19 || mantissa > LargestExactMantissa)
        {
            return false;
        }

        value = decimals > 0 ? mantissa / ExactPowers[decimals] : mantissa;
        value = negative ? -value : value;
        return true;
    }
}
