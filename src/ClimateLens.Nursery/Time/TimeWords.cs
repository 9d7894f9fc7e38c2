using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Nursery.Time;

/// <summary>Times as growers say them, in sentences and on pages alike; the offset decides, so that the clock change reads right.</summary>
public static class TimeWords
{
    private static readonly OffsetDateTimePattern MomentPattern = OffsetDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH':'mm");
    private static readonly OffsetDateTimePattern ClockPattern = OffsetDateTimePattern.CreateWithInvariantCulture("HH':'mm");
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");

    /// <summary>For example "Mon 13 Oct 15:40".</summary>
    public static string Moment(OffsetDateTime time) => MomentPattern.Format(time);

    /// <summary>For example "15:40".</summary>
    public static string Clock(OffsetDateTime time) => ClockPattern.Format(time);

    /// <summary>For example "Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => DayPattern.Format(date);
}
