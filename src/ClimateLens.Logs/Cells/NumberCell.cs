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
        => TryReadPlain(cell, format.DecimalByte, out value) || (format.Either && TryReadPlain(cell, (byte)',', out value));

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

    private static bool TryReadPlain(ReadOnlySpan<byte> cell, byte decimalMark, out double value)
    {
        value = 0;
        int i = cell.Length > 0 && cell[0] is (byte)'-' or (byte)'+' ? 1 : 0;
        if (cell.Length - i is 0 or > 20)
        {
            return false;
        }

        ulong mantissa = 0;
        int digits = 0;
        int decimals = -1;
        for (; i < cell.Length; i++)
        {
            uint digit = (uint)(cell[i] - '0');
            if (digit <= 9)
            {
                mantissa = (mantissa * 10) + digit;
                digits++;
                decimals += decimals >= 0 ? 1 : 0;
            }
            else if (decimals < 0 && cell[i] == decimalMark)
            {
                decimals = 0;
            }
            else
            {
                return false;
            }
        }

        if (digits is 0 or > 19 || mantissa > LargestExactMantissa)
        {
            return false;
        }

        value = decimals > 0 ? mantissa / ExactPowers[decimals] : mantissa;
        value = cell[0] == (byte)'-' ? -value : value;
        return true;
    }
}
