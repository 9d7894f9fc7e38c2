namespace ClimateLens.Logs.Times;

/// <summary>
/// Gives each row of a file whose stamps name no year its year: the oldest row's is known, and it moves on where the date falls back by more
/// than a month. A row that is out of order by less stays in the year of its neighbours.
/// </summary>
/// <param name="format">The format of the stamps.</param>
/// <param name="first">Year of the oldest row.</param>
internal sealed class YearRoll(StampParser format, int first)
{
    // A year with a 29 February, so that no date is refused before its year is known.
    private const int AnyLeapYear = 2000;
    private const long MostDisorder = 31 * CivilDate.DayMicros;
    private const long LeastRoll = 335 * CivilDate.DayMicros;
    private const long Unread = long.MinValue;

    private readonly List<long> _places = [];

    /// <summary>Adds the next row of the file.</summary>
    public void Add(ReadOnlySpan<byte> text)
    {
        format.Year = AnyLeapYear;
        _places.Add(format.TryRead(text, out LocalStamp stamp) ? stamp.LocalMicros : Unread);
    }

    /// <summary>The year of each row; 0 where it cannot be read.</summary>
    public int[] Years()
    {
        int[] years = new int[_places.Count];
        bool newestFirst = RunsBackwards();
        int year = first;
        long? last = null;
        for (int i = 0; i < years.Length; i++)
        {
            int row = newestFirst ? years.Length - 1 - i : i;
            if (_places[row] == Unread)
            {
                continue;
            }

            long step = _places[row] - (last ?? _places[row]);
            year += step < -MostDisorder ? 1 : step > LeastRoll && year > first ? -1 : 0;
            years[row] = year;
            last = _places[row];
        }

        return years;
    }

    private bool RunsBackwards()
    {
        int trend = 0;
        long? last = null;
        foreach (long place in _places.Where(place => place != Unread))
        {
            long step = place - (last ?? place);
            trend += Math.Abs(step) <= MostDisorder ? Math.Sign(step) : 0;
            last = place;
        }

        return trend < 0;
    }
}
