namespace ClimateLens.Logs.Times;

/// <summary>
/// Finds the format of each row of a file whose times are written in several formats, such as day/month beside month/day. All rows
/// are looked at together: a reading of all of them is the better, the fewer and shorter its gaps and the fewer its steps back
/// (<see cref="StampSteps"/>). A row is decided where any other meaning would make the whole clearly worse; else it stays undecided.
/// </summary>
/// <param name="formats">The formats, at most <see cref="MostFormats"/>; where two give a row the same instant, neighbours and then the first decide.</param>
internal sealed class StampOrder(IReadOnlyList<StampParser> formats)
{
    /// <summary>Most formats that one file may mix.</summary>
    public const int MostFormats = 8;

    /// <summary>
    /// How much worse every other meaning must be, in the units of <see cref="StampSteps"/>: a gap sixteen times as long, or a gap where there is none,
    /// or a step back. Common practice, no source; held by tests that mix rows at random.
    /// </summary>
    public const float Clear = 4;

    private const long Unread = long.MinValue;

    // Beyond this the file's other direction is out of the question: one row read otherwise changes two steps, of some 70 at most.
    private const double OneWay = 1_000;

    private readonly int _width = formats.Count is >= 1 and <= MostFormats ? formats.Count : throw new ArgumentOutOfRangeException(nameof(formats));
    private readonly List<long> _meanings = [];

    /// <summary>Rows so far.</summary>
    public int Count => _meanings.Count / _width;

    /// <summary>Adds the next row of the file; false when no format reads it.</summary>
    public bool Add(ReadOnlySpan<byte> text)
    {
        bool any = false;
        foreach (StampParser format in formats)
        {
            bool read = format.TryRead(text, out LocalStamp stamp);
            _meanings.Add(read ? stamp.LocalMicros - ((stamp.OffsetSeconds ?? 0) * CivilDate.SecondMicros) : Unread);
            any |= read;
        }

        return any;
    }

    /// <summary>Decides all rows.</summary>
    public StampVerdict Decide()
    {
        int[] rows = [.. Enumerable.Range(0, Count).Where(row => Meanings(row).ContainsAnyExcept(Unread))];
        long step = UsualStep(rows);
        var forward = new StampPaths(this, rows, new StampSteps(step, newestFirst: false));
        var backward = new StampPaths(this, rows, new StampSteps(step, newestFirst: true));
        byte[] choices = new byte[Count];
        Array.Fill(choices, StampVerdict.Unreadable);
        byte[] decided = new byte[rows.Length];
        double more = backward.Total - forward.Total;
        Span<float> worse = stackalloc float[MostFormats];
        Span<float> other = stackalloc float[MostFormats];
        for (int i = rows.Length - 1; i >= 0; i--)
        {
            (more >= 0 ? forward : backward).Excess(i, worse);
            if (Math.Abs(more) < OneWay)
            {
                (more >= 0 ? backward : forward).Excess(i, other);
                for (int f = 0; f < _width; f++)
                {
                    worse[f] = Math.Min(worse[f], other[f] + (float)Math.Abs(more));
                }
            }

            decided[i] = Decide(Meanings(rows[i]), worse[.._width]);
        }

        Settle(rows, decided, choices);
        return new StampVerdict(choices, _width, backward.Total < forward.Total, step);
    }

    /// <summary>What a row could mean, by format. [µs]</summary>
    public ReadOnlySpan<long> Meanings(int row) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_meanings).Slice(row * _width, _width);

    /// <summary>Whether a format can read the row.</summary>
    public static bool IsRead(long meaning) => meaning != Unread;

    /// <summary>The best format, if each that gives another instant is clearly worse.</summary>
    private static byte Decide(ReadOnlySpan<long> meanings, ReadOnlySpan<float> worse)
    {
        int best = -1;
        for (int f = 0; f < meanings.Length; f++)
        {
            best = IsRead(meanings[f]) && (best < 0 || worse[f] < worse[best]) ? f : best;
        }

        for (int f = 0; f < meanings.Length; f++)
        {
            if (IsRead(meanings[f]) && meanings[f] != meanings[best] && worse[f] - worse[best] < Clear)
            {
                return StampVerdict.Undecided;
            }
        }

        return (byte)best;
    }

    /// <summary>Of formats that give a row the same instant, the one of the row before is taken.</summary>
    private void Settle(int[] rows, byte[] decided, byte[] choices)
    {
        byte last = 0;
        for (int i = 0; i < rows.Length; i++)
        {
            byte choice = decided[i];
            if (choice < _width)
            {
                ReadOnlySpan<long> meanings = Meanings(rows[i]);
                choice = meanings[last] == meanings[choice] ? last : choice;
                last = choice;
            }

            choices[rows[i]] = choice;
        }
    }

    /// <summary>The median over neighbours of the least distance that two of their meanings have; a day when there is none. [µs]</summary>
    private long UsualStep(int[] rows)
    {
        var steps = new List<long>();
        for (int i = 1; i < rows.Length; i++)
        {
            long least = Least(Meanings(rows[i - 1]), Meanings(rows[i]));
            if (least < long.MaxValue)
            {
                steps.Add(least);
            }
        }

        steps.Sort();
        return steps.Count == 0 ? CivilDate.DayMicros : steps[steps.Count / 2];
    }

    /// <summary>Neighbours may be written in different formats, so all pairs count; a repeated time is no step.</summary>
    private static long Least(ReadOnlySpan<long> from, ReadOnlySpan<long> to)
    {
        long least = long.MaxValue;
        foreach (long a in from)
        {
            foreach (long b in to)
            {
                long step = IsRead(a) && IsRead(b) ? Math.Abs(b - a) : 0;
                least = step > 0 ? Math.Min(least, step) : least;
            }
        }

        return least;
    }
}
