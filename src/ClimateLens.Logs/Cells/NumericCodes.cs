using System.Globalization;

namespace ClimateLens.Logs.Cells;

/// <summary>Numbers by which loggers say "no value". Common practice, no source.</summary>
internal static class NumericCodes
{
    private const int FewestRepeats = 3;

    /// <summary>Whether a number that cannot be a value looks like a code: it is written as one, or stands there again and again.</summary>
    /// <param name="text">The number as written; empty for several together.</param>
    /// <param name="count">How often it stands in the column.</param>
    public static bool IsLikely(string text, int count)
        => text.Length > 0 && (count >= FewestRepeats || IsWellKnown(text));

    /// <summary>
    /// -99, 999.9, -9999, 6999, 7777 and their kin: digits all alike, or 6 or 7 before nines; -127 of digital thermometers; the ends of
    /// 16- and 32-bit registers; and anything beyond a thousand million, which no channel counts in.
    /// </summary>
    public static bool IsWellKnown(string text)
    {
        if (!double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
        {
            return false;
        }

        if (Math.Abs(value) >= 1e9)
        {
            return true;
        }

        string digits = Math.Abs(value).ToString("0.######", CultureInfo.InvariantCulture).Replace(".", "", StringComparison.Ordinal).TrimStart('0');
        return digits is "127" or "32767" or "32768" or "65535" or "65536"
            || (digits.Length >= 2 && digits.All(c => c == '9'))
            || (digits.Length >= 4 && digits[0] is '6' or '7' && digits[1..].All(c => c == '9'))
            || (digits.Length >= 3 && digits.All(c => c == digits[0]));
    }
}
