namespace ClimateLens.Logs.Times;

/// <summary>Reads the offset from UTC behind a time: <c>Z</c>, <c>UTC</c>, <c>GMT</c>, <c>+01</c>, <c>+0100</c>, <c>+01:00</c>, with or without a blank before it.</summary>
internal static class StampOffset
{
    private const int MostHours = 18;

    /// <summary>Reads the offset; null where the text ends without one. The name of a zone in brackets behind it is passed over, as the offset says all.</summary>
    public static bool TryRead(ref DigitScan scan, out int? seconds)
    {
        seconds = null;
        _ = scan.Blanks();
        if (scan.AtEnd)
        {
            return true;
        }

        if (scan.Literal("UTC"u8) || scan.Literal("GMT"u8) || scan.Mark((byte)'Z') || scan.Mark((byte)'z'))
        {
            seconds = 0;
        }
        else if (TrySigned(ref scan, out int signed))
        {
            seconds = signed;
        }

        if (seconds is not null && scan.Rest is [(byte)'[', .., (byte)']'])
        {
            scan.Skip(scan.Rest.Length);
        }

        return seconds is not null;
    }

    private static bool TrySigned(ref DigitScan scan, out int seconds)
    {
        seconds = 0;
        bool west = scan.Mark((byte)'-');
        if (!(west || scan.Mark((byte)'+')) || !scan.Fixed(2, out int hours))
        {
            return false;
        }

        int minutes = 0;
        if ((scan.Mark((byte)':') || scan.DigitsAhead() > 0) && !scan.Fixed(2, out minutes))
        {
            return false;
        }

        seconds = ((hours * 60) + minutes) * (west ? -60 : 60);
        return hours <= MostHours && minutes < 60;
    }
}
