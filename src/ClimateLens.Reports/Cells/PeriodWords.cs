using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Units;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Cells;

/// <summary>A period in words and in file names.</summary>
public static class PeriodWords
{
    /// <summary>Name of the page's folder: <c>2025-W42</c> for a whole week, else first and last day, <c>2025-10-13_2025-10-19</c>.</summary>
    public static string FolderName(ReviewPeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        return period.Week ?? $"{LocalDatePattern.Iso.Format(period.From.Date)}_{LocalDatePattern.Iso.Format(LastDay(period))}";
    }

    /// <summary>For example "week 42 of 2025" or "Mon 13 Oct to Wed 15 Oct 2025".</summary>
    public static string Name(ReviewPeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        return period.Week is { } week ? WeekName(week) : Dates(period.From.Date, LastDay(period));
    }

    /// <summary>For example "Mon 13 Oct to Sun 19 Oct 2025".</summary>
    public static string Dates(ReviewPeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        return Dates(period.From.Date, LastDay(period));
    }

    /// <summary>First and last day in words.</summary>
    public static string Dates(LocalDate first, LocalDate last) => (first == last, first.Year == last.Year) switch
    {
        (true, _) => LocalTimes.DayAndYear(first),
        (_, true) => Phrase.Of($"{LocalTimes.Day(first)} to {LocalTimes.DayAndYear(last)}"),
        _ => Phrase.Of($"{LocalTimes.DayAndYear(first)} to {LocalTimes.DayAndYear(last)}"),
    };

    /// <summary>For example "week 42 of 2025", from <c>2025-W42</c>.</summary>
    public static string WeekName(string week)
    {
        ArgumentNullException.ThrowIfNull(week);
        return Nursery.Time.IsoWeek.TryParse(week, out Nursery.Time.IsoWeek parsed)
            ? Phrase.Of($"week {parsed.Number} of {parsed.Year}")
            : week;
    }

    private static LocalDate LastDay(ReviewPeriod period)
        => period.To.Date > period.From.Date ? period.To.Date.PlusDays(-1) : period.To.Date; // a period ends where a day starts
}
