using ClimateLens.Nursery.Time;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Units;

/// <summary>Local times of a page: <see cref="TimeWords"/>, and what only a page needs.</summary>
public static class LocalTimes
{
    private static readonly LocalDatePattern WeekDayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d");
    private static readonly LocalDatePattern MonthPattern = LocalDatePattern.CreateWithInvariantCulture("MMM");
    private static readonly LocalDatePattern DateYearPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM uuuu");
    private static readonly LocalDatePattern AxisDayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd'<br>'d");

    /// <summary>For example "Mon 13 Oct 15:40".</summary>
    public static string Moment(OffsetDateTime time) => TimeWords.Moment(time);

    /// <summary>For example "15:40".</summary>
    public static string Clock(OffsetDateTime time) => TimeWords.Clock(time);

    /// <summary>For example "Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => TimeWords.Day(date);

    /// <summary>For example "Mon 13".</summary>
    public static string WeekDayAndNumber(LocalDate date) => WeekDayPattern.Format(date);

    /// <summary>For example "Oct".</summary>
    public static string Month(LocalDate date) => MonthPattern.Format(date);

    /// <summary>For example "Mon" over "13", for the axis of a chart.</summary>
    public static string AxisDay(LocalDate date) => AxisDayPattern.Format(date);

    /// <summary>For example "Mon 13 Oct 2025".</summary>
    public static string DayAndYear(LocalDate date) => DateYearPattern.Format(date);

    /// <summary>For example "Mon 13 Oct 15:40 to 16:10"; the day is named again when it changes.</summary>
    public static string Span(OffsetDateTime start, OffsetDateTime end)
        => start.Date == end.Date ? $"{Moment(start)} to {Clock(end)}" : $"{Moment(start)} to {Moment(end)}";
}
