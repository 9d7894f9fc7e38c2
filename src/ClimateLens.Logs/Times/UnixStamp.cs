namespace ClimateLens.Logs.Times;

/// <summary>Reads a count since 1970-01-01T00:00Z, exactly, to the nearest microsecond.</summary>
internal static class UnixStamp
{
    // A count of seconds taken for milliseconds would lie in January 1970; no count of this program's logs is so small. [s]
    private const long LeastSeconds = 100_000_000;
    private const long MostSeconds = 7_258_118_400; // 2200-01-01

    /// <summary>Reads the whole text.</summary>
    /// <param name="text">UTF-8 text.</param>
    /// <param name="perSecond">Counts of a second: 1, 1,000 or 1,000,000. [1/s]</param>
    /// <param name="comma">Whether a comma is a decimal mark as well as the point.</param>
    /// <param name="stamp">The instant; its offset is 0.</param>
    public static bool TryRead(ReadOnlySpan<byte> text, long perSecond, bool comma, out LocalStamp stamp)
    {
        stamp = default;
        var scan = new DigitScan(text);
        if (!DecimalScan.TryRead(ref scan, comma, out long count, out long fraction) || !scan.AtEnd
            || count / perSecond is < LeastSeconds or >= MostSeconds)
        {
            return false;
        }

        long micros = CivilDate.SecondMicros / perSecond;
        long onesPerMicro = DecimalScan.Ones / micros;
        stamp = new LocalStamp((count * micros) + ((fraction + (onesPerMicro / 2)) / onesPerMicro), 0);
        return true;
    }
}
