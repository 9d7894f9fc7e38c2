namespace ClimateLens.Logs.Times;

/// <summary>
/// Gives each row of a file whose stamps name no year its year: the oldest row's is known, and it moves on where the date falls back by more
/// than a month. A row that is out of order by less stays in the year of its neighbours, and so does one that alone is far from both.
/// </summary>
internal static class YearRoll
{
    /// <summary>A year with a 29 February, so that no date is refused before its year is known: dates are given in it.</summary>
    public const int AnyLeapYear = 2000;

    /// <summary>Stands for a row whose time cannot be read.</summary>
    public const long Unread = long.MinValue;

    private const long MostDisorder = 31 * CivilDate.DayMicros;
    private const long LeastRoll = 335 * CivilDate.DayMicros;

    /// <summary>The year of each row; 0 where it cannot be read.</summary>
    /// <param name="places">Time of each row within <see cref="AnyLeapYear"/>, in the order of the file. [µs since 1970-01-01]</param>
    /// <param name="first">Year of the oldest row.</param>
    public static int[] YearsOf(ReadOnlySpan<long> places, int first)
    {
        int[] years = new int[places.Length];
        int[] rows = RowsInTime(places);
        int year = first;
        long last = rows.Length > 0 ? places[rows[0]] : 0;
        for (int i = 0; i < rows.Length; i++)
        {
            long place = places[rows[i]];
            bool alone = i + 1 < rows.Length && IsFar(place, last) && !IsFar(places[rows[i + 1]], last); // a torn date turns no year
            long step = alone ? 0 : place - last;
            year += step < -MostDisorder ? 1 : step > LeastRoll && year > first ? -1 : 0;
            years[rows[i]] = year;
            last += step;
        }

        return years;
    }

    /// <summary>The rows that can be read, from the oldest on.</summary>
    private static int[] RowsInTime(ReadOnlySpan<long> places)
    {
        var rows = new List<int>(places.Length);
        int trend = 0;
        for (int row = 0; row < places.Length; row++)
        {
            if (places[row] == Unread)
            {
                continue;
            }

            long step = rows.Count > 0 ? places[row] - places[rows[^1]] : 0;
            trend += Math.Abs(step) <= MostDisorder ? Math.Sign(step) : 0;
            rows.Add(row);
        }

        if (trend < 0)
        {
            rows.Reverse();
        }

        return [.. rows];
    }

    /// <summary>Whether two dates are more than a month apart, whichever year they are of.</summary>
    private static bool IsFar(long one, long other)
    {
        long apart = Math.Abs(one - other);
        return Math.Min(apart, (366 * CivilDate.DayMicros) - apart) > MostDisorder;
    }
}
