using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.Reports.Cells;

/// <summary>A column of the calendar: a clock hour, and which time round it is on a day whose clock was put back.</summary>
/// <param name="Hour">Clock hour, 0 to 23.</param>
/// <param name="Turn">0 for the first time round, 1 for the second.</param>
internal readonly record struct CalendarColumn(int Hour, int Turn) : IComparable<CalendarColumn>
{
    /// <summary>"01", and "01b" for its second time round.</summary>
    public string Label => $"{Hour:00}{(Turn == 0 ? "" : "b")}";

    public int CompareTo(CalendarColumn other) => (Hour, Turn).CompareTo((other.Hour, other.Turn));
}

/// <summary>One local day with its hours by column; a column that it lacks had no such hour that day.</summary>
internal sealed record CalendarDay(LocalDate Date, IReadOnlyDictionary<CalendarColumn, ReviewHour> Hours);

/// <summary>Hours by local day and clock hour, also on days of 23 and 25 hours.</summary>
internal sealed record CalendarGrid(IReadOnlyList<CalendarColumn> Columns, IReadOnlyList<CalendarDay> Days)
{
    public static CalendarGrid Of(IEnumerable<ReviewHour> hours)
    {
        SortedSet<CalendarColumn> columns = [.. Enumerable.Range(0, 24).Select(h => new CalendarColumn(h, 0))];
        List<CalendarDay> days = [];
        foreach (IGrouping<LocalDate, ReviewHour> day in hours.GroupBy(h => h.Start.Date))
        {
            Dictionary<CalendarColumn, ReviewHour> cells = [];
            foreach (ReviewHour hour in day)
            {
                CalendarColumn column = new(hour.Start.Hour, 0);
                column = cells.ContainsKey(column) ? column with { Turn = 1 } : column;
                cells[column] = hour;
                columns.Add(column);
            }

            days.Add(new CalendarDay(day.Key, cells));
        }

        return new CalendarGrid([.. columns], days);
    }
}
