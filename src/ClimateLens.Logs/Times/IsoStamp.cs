namespace ClimateLens.Logs.Times;

/// <summary>
/// Reads ISO 8601 calendar dates with time: <c>2025-10-13T14:05</c>, with seconds, fractions and offset where given,
/// 'T' or a blank between date and time, or the date alone.
/// </summary>
internal static class IsoStamp
{
    /// <summary>Reads the whole text.</summary>
    public static bool TryRead(ReadOnlySpan<byte> text, out LocalStamp stamp)
    {
        stamp = default;
        var scan = new DigitScan(text);
        if (!scan.Fixed(4, out int year) || !scan.Mark((byte)'-') || !scan.Fixed(2, out int month)
            || !scan.Mark((byte)'-') || !scan.Fixed(2, out int day) || !CivilDate.TryDays(year, month, day, out int days))
        {
            return false;
        }

        long time = 0;
        int? offset = null;
        if (!scan.AtEnd && !(TryTime(ref scan, out time) && TryOffset(ref scan, out offset)))
        {
            return false;
        }

        stamp = new LocalStamp((days * CivilDate.DayMicros) + time, offset);
        return scan.AtEnd;
    }

    private static bool TryTime(ref DigitScan scan, out long time)
    {
        time = 0;
        int second = 0;
        int micros = 0;
        if (!(scan.Mark((byte)'T') || scan.Mark((byte)'t') || scan.Blanks())
            || !scan.Fixed(2, out int hour) || !scan.Mark((byte)':') || !scan.Fixed(2, out int minute))
        {
            return false;
        }

        if (scan.Mark((byte)':') && !scan.Fixed(2, out second))
        {
            return false;
        }

        if ((scan.Mark((byte)'.') || scan.Mark((byte)',')) && !scan.Fraction(out micros))
        {
            return false;
        }

        return CivilDate.TryTimeOfDay(hour, minute, second, micros, out time);
    }

    /// <summary>Reads <c>Z</c>, <c>+01</c>, <c>+0100</c> or <c>+01:00</c>; nothing at the end of the text.</summary>
    internal static bool TryOffset(ref DigitScan scan, out int? offsetSeconds)
    {
        offsetSeconds = null;
        if (scan.AtEnd)
        {
            return true;
        }

        if (scan.Mark((byte)'Z') || scan.Mark((byte)'z'))
        {
            offsetSeconds = 0;
            return true;
        }

        bool west = scan.Mark((byte)'-');
        if (!(west || scan.Mark((byte)'+')) || !scan.Fixed(2, out int hours))
        {
            return false;
        }

        int minutes = 0;
        if ((scan.Mark((byte)':') || !scan.AtEnd) && !scan.Fixed(2, out minutes))
        {
            return false;
        }

        int seconds = ((hours * 60) + minutes) * 60;
        offsetSeconds = west ? -seconds : seconds;
        return hours <= 18 && minutes < 60;
    }
}
