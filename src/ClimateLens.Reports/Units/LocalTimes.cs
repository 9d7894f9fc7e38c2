using System.Globalization;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Reports.Units;

/// <summary>Local times of a page: <see cref="TimeWords"/>, and what only a page needs.</summary>
public static class LocalTimes
{
    /// <summary>For example "Mon 13 Oct 15:40".</summary>
    public static string Moment(OffsetDateTime time) => TimeWords.Moment(time);

    /// <summary>For example "15:40".</summary>
    public static string Clock(OffsetDateTime time) => TimeWords.Clock(time);

    /// <summary>For example "Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => TimeWords.Day(date);

    /// <summary>For example "Mon 13".</summary>
    public static string WeekDayAndNumber(LocalDate date) => $"{TimeWords.WeekDay(date)} {Number(date.Day)}";

    /// <summary>For example "Oct".</summary>
    public static string Month(LocalDate date) => TimeWords.Month(date);

    /// <summary>For example "Mon" over "13", for the axis of a chart.</summary>
    public static string AxisDay(LocalDate date) => $"{TimeWords.WeekDay(date)}<br>{Number(date.Day)}";

    /// <summary>For example "Mon 13 Oct 2025".</summary>
    public static string DayAndYear(LocalDate date) => $"{Day(date)} {date.Year.ToString("0000", CultureInfo.InvariantCulture)}";

    /// <summary>For example "Mon 13 Oct 15:40 to 16:10"; the day is named again when it changes.</summary>
    public static string Span(OffsetDateTime start, OffsetDateTime end)
        => start.Date == end.Date ? Phrase.Of($"{Moment(start)} to {Clock(end)}") : Phrase.Of($"{Moment(start)} to {Moment(end)}");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
