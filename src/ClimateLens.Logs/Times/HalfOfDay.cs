namespace ClimateLens.Logs.Times;

/// <summary>AM and PM as people write them: <c>AM</c>, <c>am</c>, <c>a.m.</c>, <c>a. m.</c> (also with no-break spaces), <c>A</c>, <c>p</c>.</summary>
internal static class HalfOfDay
{
    /// <summary>Reads the mark.</summary>
    public static bool TryRead(ref DigitScan scan, out bool afternoon)
    {
        afternoon = scan.Mark((byte)'P') || scan.Mark((byte)'p');
        if (!afternoon && !scan.Mark((byte)'A') && !scan.Mark((byte)'a'))
        {
            return false;
        }

        _ = scan.Mark((byte)'.');
        DigitScan ahead = scan;
        _ = ahead.Blanks();
        if (ahead.Mark((byte)'M') || ahead.Mark((byte)'m'))
        {
            _ = ahead.Mark((byte)'.');
            scan = ahead;
        }

        return true;
    }

    /// <summary>
    /// The hour 0 to 23, or -1 where hour and mark contradict each other. 12 AM is midnight and 12 PM noon; 14 PM and 0 AM, which some programs
    /// write, leave no doubt either.
    /// </summary>
    public static int HourOf(int hour, bool afternoon) => hour switch
    {
        >= 0 and <= 12 => (hour % 12) + (afternoon ? 12 : 0),
        <= 23 when afternoon => hour,
        _ => -1,
    };
}
