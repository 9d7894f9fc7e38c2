using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Knows a torn row that has the right number of fields by what the rows on both sides do: a number of another form where theirs agree, or a
/// time that leaps away from theirs, which follow each other. Common practice, no source; held by tests that tear rows at random.
/// </summary>
internal sealed class TornRows
{
    // In steps from the row before to the row behind: merged files have rows that stand out of order by less.
    private const int LeastLeap = 3;

    // Where time leaps more often, that is how the file is made.
    private const int RowsBetweenLeaps = 24;

    private int _sinceLeap = RowsBetweenLeaps;

    /// <summary>What is wrong with the row that was taken last from a window, or null.</summary>
    public ProblemCode? FaultOf(RowWindow window, HeldRow row)
    {
        _sinceLeap++;
        if (row.OddField >= 0 && window.Neighbour(-1)?.OddField != row.OddField && window.Neighbour(1)?.OddField != row.OddField)
        {
            return ProblemCodes.Torn;
        }

        if (!Leaps(window, row))
        {
            return null;
        }

        bool alone = _sinceLeap > RowsBetweenLeaps;
        _sinceLeap = 0;
        return alone ? ProblemCodes.TimeLeap : null;
    }

    private static bool Leaps(RowWindow window, HeldRow row)
    {
        if (window.Neighbour(-2) is not { } first || window.Neighbour(-1) is not { } before || window.Neighbour(1) is not { } behind || window.Neighbour(2) is not { } last)
        {
            return false;
        }

        bool up = first.Utc <= before.Utc && before.Utc < behind.Utc && behind.Utc <= last.Utc;
        bool down = first.Utc >= before.Utc && before.Utc > behind.Utc && behind.Utc >= last.Utc;
        (long low, long high) = up ? (before.Utc, behind.Utc) : (behind.Utc, before.Utc);
        bool far = Math.Max(low - row.Utc, row.Utc - high) > LeastLeap * (high - low);
        return (up || down) && far && IsCertain(first) && IsCertain(before) && IsCertain(row) && IsCertain(behind) && IsCertain(last);
    }

    private static bool IsCertain(HeldRow row) => row.Meaning == LocalMeaning.Once;
}
