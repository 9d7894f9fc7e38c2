namespace ClimateLens.Logs.Times;

/// <summary>Reads the usual times of day, <c>14:05</c> and <c>14:05:09</c>, without walking over a pattern; any other text is left to the pattern.</summary>
/// <param name="mark">The mark between the numbers.</param>
/// <param name="minutes">Whether a time may end with its minutes.</param>
/// <param name="seconds">Whether it may end with its seconds.</param>
internal readonly struct PlainClock(byte mark, bool minutes, bool seconds)
{
    private const int MinuteBytes = 5;
    private const int SecondBytes = 8;

    /// <summary>The clock of ISO 8601.</summary>
    public static PlainClock Iso { get; } = new((byte)':', true, true);

    /// <summary>The clock of a pattern's last parts; one that reads nothing where they are of another kind.</summary>
    public static PlainClock Of(ReadOnlySpan<StampPart> parts) => parts switch
    {
        [{ Letter: 'H' }, { Literal: [byte one] }, { Letter: 'm' }] => new PlainClock(one, true, false),
        [{ Letter: 'H' }, { Literal: [byte one] }, { Letter: 'm' }, { Literal: [byte two] }, { Letter: 's' }] when one == two => new PlainClock(one, false, true),
        _ => default,
    };

    /// <summary>Reads the whole text. [µs]</summary>
    public bool TryRead(ReadOnlySpan<byte> text, out long time)
    {
        time = 0;
        bool whole = text.Length == SecondBytes && seconds;
        if (!(whole || (text.Length == MinuteBytes && minutes)) || text[2] != mark)
        {
            return false;
        }

        int hour = Pair(text);
        int minute = Pair(text[3..]);
        int second = whole && text[5] == mark ? Pair(text[6..]) : whole ? -1 : 0;
        time = (((hour * 60L) + minute) * 60 + second) * CivilDate.SecondMicros;
        return (uint)hour < 24 && (uint)minute < 60 && (uint)second < 60;
    }

    /// <summary>The number of two digits, or less than 0.</summary>
    private static int Pair(ReadOnlySpan<byte> text)
    {
        uint tens = (uint)(text[0] - '0');
        uint ones = (uint)(text[1] - '0');
        return tens > 9 || ones > 9 ? -1 : (int)((tens * 10) + ones);
    }
}
