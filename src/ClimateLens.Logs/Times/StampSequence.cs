namespace ClimateLens.Logs.Times;

/// <summary>
/// The stamps of one file in their order: maps each to UTC and, at the end, tells the two passes of a repeated hour
/// apart by the order of the rows.
/// </summary>
/// <param name="clock">The clock of the export.</param>
/// <param name="stepMicros">Nominal step, or null: the usual one of the file; 0 for records, which have none. [µs]</param>
internal sealed class StampSequence(ZoneClock clock, long? stepMicros)
{
    // A file runs forwards or backwards when nine steps of ten do.
    private const double ClearDirection = 0.9;

    private readonly Dictionary<long, RepeatedHour> _hours = [];
    private readonly long[] _recent = new long[512];
    private RepeatedHour? _open;
    private int _tickets;
    private long? _last;
    private long _forward;
    private long _backward;
    private int _certain;

    /// <summary>How many stamps wait for <see cref="Resolve"/>.</summary>
    public int Waiting => _tickets;

    /// <summary>Maps a stamp. One that is <see cref="LocalMeaning.Twice"/> gets the next ticket, counted from 0, and a provisional instant.</summary>
    public LocalMeaning Add(LocalStamp stamp, bool dateOnly, out long utcMicros)
    {
        if (stamp.OffsetSeconds is int offset)
        {
            utcMicros = stamp.LocalMicros - (offset * CivilDate.SecondMicros);
            Certain(utcMicros);
            return LocalMeaning.Once;
        }

        LocalMeaning meaning = clock.Map(stamp.LocalMicros, out utcMicros, out long late);
        if (dateOnly && meaning != LocalMeaning.Once)
        {
            utcMicros = clock.StartOfDay(stamp.LocalMicros);
            meaning = LocalMeaning.Once;
        }

        if (meaning == LocalMeaning.Once)
        {
            Certain(utcMicros);
        }
        else if (meaning == LocalMeaning.Twice)
        {
            Uncertain(stamp.LocalMicros, utcMicros, late);
        }

        return meaning;
    }

    /// <summary>The instants of the waiting stamps by ticket; null where order can't tell. [µs]</summary>
    public long?[] Resolve()
    {
        var resolved = new long?[_tickets];
        long step = stepMicros ?? (_hours.Count > 0 ? UsualStep() : 0);
        foreach (RepeatedHour hour in _hours.Values)
        {
            bool? newestFirst = NewestFirst(hour);
            if (newestFirst is bool backwards)
            {
                hour.Resolve(resolved, backwards, step);
            }
        }

        return resolved;
    }

    private bool? NewestFirst(RepeatedHour hour)
    {
        long steps = _forward + _backward;
        if (steps == 0)
        {
            return hour.Trend() < 0;
        }

        return _forward >= ClearDirection * steps ? false : _backward >= ClearDirection * steps ? true : null;
    }

    private void Certain(long utcMicros)
    {
        if (_open is not null)
        {
            _open.After = utcMicros;
            _open = null;
        }
        else if (_last is long last && utcMicros != last)
        {
            if (utcMicros > last)
            {
                _forward++;
            }
            else
            {
                _backward++;
            }
        }

        _recent[_certain & (_recent.Length - 1)] = utcMicros;
        _certain = _certain == int.MaxValue ? _recent.Length : _certain + 1;
        _last = utcMicros;
    }

    private void Uncertain(long local, long early, long late)
    {
        // Rows of one change of the clock share the day.
        long day = local / CivilDate.DayMicros;
        if (!_hours.TryGetValue(day, out RepeatedHour? hour))
        {
            _hours.Add(day, hour = new RepeatedHour { Before = _last });
        }

        hour.Add(_tickets++, early, late);
        _open = hour;
    }

    /// <summary>The usual step of the last certain stamps; 0 when there are too few. [µs]</summary>
    private long UsualStep()
    {
        long[] recent = [.. _recent.Take(_certain).Distinct().Order()];
        var finder = new StepFinder();
        finder.Add(recent);
        return (finder.Find()?.Seconds ?? 0) * CivilDate.SecondMicros;
    }
}
