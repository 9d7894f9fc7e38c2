using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>How times follow each other from row to row.</summary>
internal sealed class OrderTally
{
    private const int MostSteps = 4096;
    private const long MostOfADay = CivilDate.DayMicros * 20 / 24;

    private readonly Dictionary<long, int> _steps = [];
    private long _last;
    private int _lost;

    /// <summary>Number of times.</summary>
    public int Count { get; private set; }

    /// <summary>The first time. [µs]</summary>
    public long First { get; private set; }

    /// <summary>The last time. [µs]</summary>
    public long Last => _last;

    /// <summary>The earliest time. [µs]</summary>
    public long Earliest { get; private set; } = long.MaxValue;

    /// <summary>The latest time. [µs]</summary>
    public long Latest { get; private set; } = long.MinValue;

    /// <summary>Rows with the time of the row before.</summary>
    public int Repeats => _steps.GetValueOrDefault(0L);

    /// <summary>Whether the newest row stands first.</summary>
    public bool NewestFirst => Count > 1 && Last < First && _steps.Where(s => s.Key < 0).Sum(s => s.Value) > _steps.Where(s => s.Key > 0).Sum(s => s.Value);

    /// <summary>Whether there is no gap: every step is about the usual one, and none goes back.</summary>
    public bool IsWithoutGap => _lost == 0 && UsualStep() is { Micros: > 0 and var usual } && NewestFirst is var down && _steps.Keys.All(s => s == 0 || ((down ? s < 0 : s > 0) && Math.Abs(s) < 2 * usual));

    /// <summary>Adds the next row's time. [µs]</summary>
    public void Add(long micros)
    {
        if (Count++ == 0)
        {
            First = micros;
        }
        else
        {
            long step = micros - _last;
            if (_steps.TryGetValue(step, out int seen) || _steps.Count < MostSteps)
            {
                _steps[step] = seen + 1;
            }
            else
            {
                _lost++;
            }
        }

        _last = micros;
        Earliest = Math.Min(Earliest, micros);
        Latest = Math.Max(Latest, micros);
    }

    /// <summary>The most frequent step but 0, and its share of the steps that are not 0; 0 when there is none. [µs]</summary>
    public (long Micros, double Share) UsualStep()
    {
        long best = 0;
        int most = 0;
        long all = _lost;
        foreach ((long step, int count) in _steps)
        {
            if (step == 0)
            {
                continue;
            }

            all += count;
            if (count > most || (count == most && Math.Abs(step) < Math.Abs(best)))
            {
                (best, most) = (step, count);
            }
        }

        return (Math.Abs(best), all == 0 ? 0 : most / (double)all);
    }

    /// <summary>Steps against the direction of the file and, where it keeps to a step, leaps far longer than that: signs of a wrong reading.</summary>
    public int Oddities()
    {
        bool down = NewestFirst;
        (long usual, _) = UsualStep();
        long near = _steps.Where(s => Math.Abs(s.Key) > usual / 2 && Math.Abs(s.Key) < 2 * usual).Sum(s => (long)s.Value); // stamps cut to minutes stray around the step
        long far = 2 * near > _lost + _steps.Where(s => s.Key != 0).Sum(s => (long)s.Value) ? Math.Max(MostOfADay, 20 * usual) : long.MaxValue;
        return _steps.Where(s => (down ? s.Key > 0 : s.Key < 0) || Math.Abs(s.Key) > far).Sum(s => s.Value);
    }
}
