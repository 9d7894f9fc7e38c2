namespace ClimateLens.Logs.Times;

/// <summary>
/// Reads a date of a spreadsheet as the number of days (ECMA-376 Part 1, 18.17.4.1), to the nearest second: a program that writes
/// 0.003472222 means five minutes. Date and time of day may stand apart, as <c>45943 0.5</c>.
/// </summary>
internal static class SerialStamp
{
    /// <summary>
    /// Day 0 of the system of 1900 for days from 61 on, in days since 1970. The system counts a 29 February 1900 that never was as day 60; days
    /// before it would lie one day later, but dates before 1950 are refused anyway.
    /// </summary>
    public const int Origin1900 = -25_569;

    /// <summary>Day 0 of the system of 1904, 1 January 1904, in days since 1970.</summary>
    public const int Origin1904 = -24_107;

    private const long DaySeconds = 86_400;

    /// <summary>Reads the whole text.</summary>
    /// <param name="text">UTF-8 text.</param>
    /// <param name="origin">Day 0, in days since 1970.</param>
    /// <param name="comma">Whether a comma is a decimal mark as well as the point.</param>
    /// <param name="stamp">The clock time.</param>
    public static bool TryRead(ReadOnlySpan<byte> text, int origin, bool comma, out LocalStamp stamp)
    {
        stamp = default;
        var scan = new DigitScan(text);
        if (!DecimalScan.TryRead(ref scan, comma, out long days, out long fraction))
        {
            return false;
        }

        if (scan.Blanks() && !(fraction == 0 && DecimalScan.TryRead(ref scan, comma, out long none, out fraction) && none == 0))
        {
            return false;
        }

        if (!scan.AtEnd || days > int.MaxValue || !CivilDate.IsInRange((int)days + (long)origin))
        {
            return false;
        }

        long seconds = ((fraction * DaySeconds) + (DecimalScan.Ones / 2)) / DecimalScan.Ones;
        stamp = new LocalStamp(((days + origin) * CivilDate.DayMicros) + (seconds * CivilDate.SecondMicros), null);
        return true;
    }
}
