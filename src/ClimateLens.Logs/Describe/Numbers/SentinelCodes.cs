using System.Globalization;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Numbers that loggers write where they have no value. Common practice, no source.</summary>
internal static class SentinelCodes
{
    private const double Absurd = 1e6;

    private static readonly double[] Known =
        [-99, -99.9, -99.99, -100, -199.9, -200, -273, -273.15, -327.68, -3276.8, -999, -999.9, -999.99, -888, -777, -1000, -6999, -7999, -9999, -9999.9, -99999, -32768, -32767, -32766,
         99.9, 99.99, 127, 127.5, 255, 327.67, 850, 999, 999.9, 999.99, 1000, 3276.7, 6553.5, 655.35, 6999, 7999, 9999, 9999.9, 9999.99, 32767, 32766, 65535, 65534, 99999, 999999];

    /// <summary>Whether a number may be such a code; whether it is one, its column tells.</summary>
    public static bool MayBe(string cell)
    {
        if (cell.Length == 0 || (cell[0] != '-' && !cell.Contains('9') && !cell.Contains('5') && !cell.Contains('7') && cell.Length < 6 && cell != "850"))
        {
            return false;
        }

        return TryRead(cell, out double value) && IsKnown(value);
    }

    /// <summary>Whether a value is a known code or beyond all measure.</summary>
    public static bool IsKnown(double value) => Math.Abs(value) > Absurd || Known.Contains(value);

    /// <summary>Reads a number with either mark, without groups.</summary>
    public static bool TryRead(string cell, out double value)
        => double.TryParse(cell.Replace(',', '.'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value);
}
