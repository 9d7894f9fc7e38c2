namespace ClimateLens.Logs.Times;

/// <summary>
/// Reads ISO 8601 dates with time: <c>2025-10-13T14:05</c>, with seconds, fractions and offset where given, 'T' or a blank between
/// date and time, the date alone, the day of the year (<c>2025-286</c>), and the basic forms without marks (<c>20251013T1405</c>).
/// </summary>
internal static class IsoStamp
{
    /// <summary>Reads a date.</summary>
    /// <param name="scan">The text.</param>
    /// <param name="days">Days since 1970-01-01. [d]</param>
    public static bool TryDate(ref DigitScan scan, out int days)
    {
        days = 0;
        if (!scan.Fixed(4, out int year))
        {
            return false;
        }

        bool marks = scan.Mark((byte)'-');
        int digits = scan.DigitsAhead();
        if (digits == 3)
        {
            return scan.Fixed(3, out int ordinal) && CivilDate.TryDayOfYear(year, ordinal, out days);
        }

        return (marks ? digits == 2 : digits == 4) && scan.Fixed(2, out int month) && (!marks || scan.Mark((byte)'-'))
            && scan.Fixed(2, out int day) && scan.DigitsAhead() == 0 && CivilDate.TryDays(year, month, day, out days);
    }

    /// <summary>Reads what stands between date and time.</summary>
    public static bool TrySeparator(ref DigitScan scan) => scan.Mark((byte)'T') || scan.Mark((byte)'t') || scan.Blanks();

    /// <summary>Reads <c>14</c>, <c>14:05</c>, <c>14:05:09</c>, <c>14:05:09.25</c> or the same without colons.</summary>
    public static bool TryTime(ref DigitScan scan, out long time)
    {
        time = 0;
        int minute = 0;
        int second = 0;
        int micros = 0;
        if (!scan.Fixed(2, out int hour))
        {
            return false;
        }

        bool marks = scan.Mark((byte)':');
        if (marks || scan.DigitsAhead() > 0)
        {
            if (!scan.Fixed(2, out minute) || ((marks ? scan.Mark((byte)':') : scan.DigitsAhead() > 0) && !TrySeconds(ref scan, out second, out micros)))
            {
                return false;
            }
        }

        return CivilDate.TryTimeOfDay(hour, minute, second, micros, out time);
    }

    private static bool TrySeconds(ref DigitScan scan, out int second, out int micros)
    {
        micros = 0;
        return scan.Fixed(2, out second) && (!(scan.Mark((byte)'.') || scan.Mark((byte)',')) || scan.Fraction(out micros));
    }
}
