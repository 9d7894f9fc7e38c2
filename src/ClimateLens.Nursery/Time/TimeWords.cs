using System.Globalization;
using ClimateLens.Nursery.Languages;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Time;

/// <summary>
/// Times as growers say them, in sentences and on pages alike, in the language of the moment; the offset decides, so that
/// the clock change reads right.
/// </summary>
public static class TimeWords
{
    private static readonly string[] Days =
        [Phrase.Id("Mon"), Phrase.Id("Tue"), Phrase.Id("Wed"), Phrase.Id("Thu"), Phrase.Id("Fri"), Phrase.Id("Sat"), Phrase.Id("Sun")];

    private static readonly string[] Months =
    [
        Phrase.Id("Jan"), Phrase.Id("Feb"), Phrase.Id("Mar"), Phrase.Id("Apr"), Phrase.Id("May"), Phrase.Id("Jun"),
        Phrase.Id("Jul"), Phrase.Id("Aug"), Phrase.Id("Sep"), Phrase.Id("Oct"), Phrase.Id("Nov"), Phrase.Id("Dec"),
    ];

    private static readonly string[] LongMonths =
    [
        Phrase.Id("January"), Phrase.Id("February"), Phrase.Id("March"), Phrase.Id("April"), Phrase.Id("May"), Phrase.Id("June"),
        Phrase.Id("July"), Phrase.Id("August"), Phrase.Id("September"), Phrase.Id("October"), Phrase.Id("November"), Phrase.Id("December"),
    ];

    private static readonly OffsetDateTimePattern ClockPattern = OffsetDateTimePattern.CreateWithInvariantCulture("HH':'mm");

    /// <summary>For example "Mon 13 Oct 15:40".</summary>
    public static string Moment(OffsetDateTime time) => $"{Day(time.Date)} {Clock(time)}";

    /// <summary>For example "15:40".</summary>
    public static string Clock(OffsetDateTime time) => ClockPattern.Format(time);

    /// <summary>For example "Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => $"{WeekDay(date)} {Number(date)} {Month(date)}";

    /// <summary>For example "Mon".</summary>
    public static string WeekDay(LocalDate date) => Phrase.Of(Days[(int)date.DayOfWeek - 1]);

    /// <summary>For example "Oct".</summary>
    public static string Month(LocalDate date) => Phrase.Of(Months[date.Month - 1]);

    /// <summary>For example "26 March 2025".</summary>
    public static string Date(LocalDate date) => $"{Number(date)} {Phrase.Of(LongMonths[date.Month - 1])} {date.Year.ToString("0000", CultureInfo.InvariantCulture)}";

    private static string Number(LocalDate date) => date.Day.ToString(CultureInfo.InvariantCulture);
}
