namespace ClimateLens.Logs.Times;

/// <summary>The rows of a file that fall into one repeated hour of autumn, in file order, and how to tell its two passes apart.</summary>
internal sealed class RepeatedHour
{
    // A loop that reads more rows of one hour than one a half second is no climate log; its rows are set aside.
    private const int MostRows = 15_000;

    private readonly List<(int Ticket, long Early, long Late)> _rows = [];

    /// <summary>Last certain instant before the first row, or null. [µs]</summary>
    public long? Before { get; init; }

    /// <summary>First certain instant after the last row, or null. [µs]</summary>
    public long? After { get; set; }

    /// <summary>Notes a row.</summary>
    public void Add(int ticket, long early, long late) => _rows.Add((ticket, early, late));

    /// <summary>Writes the instant of each row that order decides into <paramref name="resolved"/>, by ticket; leaves null where it can't tell.</summary>
    /// <param name="resolved">Instants by ticket. [µs]</param>
    /// <param name="newestFirst">Whether the file runs backwards.</param>
    /// <param name="stepMicros">Usual step of the file, or 0 when unknown. [µs]</param>
    public void Resolve(long?[] resolved, bool newestFirst, long stepMicros)
    {
        if (_rows.Count > MostRows)
        {
            return;
        }

        if (newestFirst)
        {
            _rows.Reverse();
        }

        int split = Split();
        if (split < 0)
        {
            split = SplitByNeighbours(newestFirst ? After : Before, newestFirst ? Before : After, stepMicros);
        }

        for (int i = 0; split >= 0 && i < _rows.Count; i++)
        {
            resolved[_rows[i].Ticket] = i < split ? _rows[i].Early : _rows[i].Late;
        }

        if (newestFirst)
        {
            _rows.Reverse(); // back into the order of the file: it may be asked again
        }
    }

    /// <summary>How many rows run up against the running of the clock less how many run down; tells the file's direction when nothing else does.</summary>
    public int Trend()
    {
        int trend = 0;
        for (int i = 1; i < _rows.Count; i++)
        {
            trend += Math.Sign(_rows[i].Early - _rows[i - 1].Early);
        }

        return trend;
    }

    /// <summary>First row of the second pass, where the clock is seen to fall back exactly once; else -1.</summary>
    private int Split()
    {
        int backs = 0;
        int stands = 0;
        int back = -1;
        int stand = -1;
        for (int i = 1; i < _rows.Count; i++)
        {
            long step = _rows[i].Early - _rows[i - 1].Early;
            if (step < 0)
            {
                backs++;
                back = i;
            }
            else if (step == 0)
            {
                stands++;
                stand = i;
            }
        }

        // An hourly log shows the same time twice running and nothing else of that hour.
        return backs == 1 ? back : backs == 0 && stands == 1 && _rows.Count == 2 ? stand : -1;
    }

    /// <summary>Only one pass was logged: it is the first where it joins what stands before and not what follows, and the other way round.</summary>
    private int SplitByNeighbours(long? before, long? after, long stepMicros)
    {
        for (int i = 1; i < _rows.Count; i++)
        {
            if (_rows[i].Early < _rows[i - 1].Early)
            {
                return -1;
            }
        }

        long reach = stepMicros + (stepMicros / 2);
        bool joinsBefore = before is long b && _rows[0].Early - b <= reach;
        bool joinsAfter = after is long a && a - _rows[^1].Late <= reach;
        return joinsBefore == joinsAfter ? -1 : joinsBefore ? _rows.Count : 0;
    }
}
