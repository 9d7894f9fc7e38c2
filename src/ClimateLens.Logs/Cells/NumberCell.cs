using System.Globalization;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Reads a whole cell as a number, or not at all. "1,5" where the decimal mark is '.' is no number (the framework's
/// parsers would make 15 of it), nor are NaN, Infinity, hexadecimals, and numbers too large for a double.
/// </summary>
internal static class NumberCell
{
    private const int LongestNumber = 128;
    private const ulong LargestExactMantissa = 1UL << 53;

    // Powers of ten up to 1e22 are exact doubles, so one product or quotient of an exact mantissa is rounded once:
    // correct to the last bit [CLINGER90].
    private static readonly double[] ExactPowers = [.. Enumerable.Range(0, 23).Select(n => double.Parse($"1e{n}", CultureInfo.InvariantCulture))];

    /// <summary>Reads <paramref name="cell"/>, which holds no surrounding blanks.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, NumberFormat format, out double value)
    {
        if (TryReadPlain(cell, format.DecimalByte, out value))
        {
            return true;
        }

        Span<byte> canonical = stackalloc byte[LongestNumber];
        int length = Canonical(cell, format, canonical);
        return length > 0
            && double.TryParse(canonical[..length], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    /// <summary>The quick way for what nearly every cell is: sign, up to 19 digits, one decimal mark of one byte, no exponent.</summary>
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

    /// <summary>Rewrites a number with '.' and without group marks; 0 when the cell is no number.</summary>
    private static int Canonical(ReadOnlySpan<byte> cell, NumberFormat format, Span<byte> into)
    {
        int length = 0;
        int groupDigits = -1; // digits since the last group mark; -1 before the first
        int digits = 0;
        bool whole = true; // still left of decimal mark and exponent
        while (cell.Length > 0)
        {
            if (length == into.Length)
            {
                return 0;
            }

            byte b = cell[0];
            if (whole && format.Group.Length > 0 && cell.StartsWith(format.Group))
            {
                if (groupDigits >= 0 ? groupDigits != 3 : digits is < 1 or > 3)
                {
                    return 0;
                }

                groupDigits = 0;
                cell = cell[format.Group.Length..];
            }
            else if (whole && cell.StartsWith(format.Decimal))
            {
                if (groupDigits >= 0 && groupDigits != 3)
                {
                    return 0;
                }

                whole = false;
                groupDigits = -1;
                into[length++] = (byte)'.';
                cell = cell[format.Decimal.Length..];
            }
            else if (b is >= (byte)'0' and <= (byte)'9')
            {
                digits++;
                groupDigits += groupDigits >= 0 && whole ? 1 : 0;
                into[length++] = b;
                cell = cell[1..];
            }
            else if (b is (byte)'-' or (byte)'+' || (b is (byte)'e' or (byte)'E' && digits > 0))
            {
                whole &= b is not ((byte)'e' or (byte)'E');
                into[length++] = b;
                cell = cell[1..];
            }
            else
            {
                return 0;
            }
        }

        return groupDigits >= 0 && groupDigits != 3 ? 0 : length;
    }
}
