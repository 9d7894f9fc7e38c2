using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Analysis.Text;

/// <summary>Numbers and times in sentences: invariant culture, local time of the nursery, no more digits than the data carry.</summary>
internal static class Say
{
    private static readonly LocalDateTimePattern TimePattern = LocalDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH:mm");
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");
    private static readonly LocalTimePattern ClockPattern = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>A number as it stands.</summary>
    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>A number with fixed decimals.</summary>
    public static string Number(double value, int decimals)
        => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>"1 step", "2 steps".</summary>
    public static string Count(int count, string noun)
        => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");

    /// <summary>A length of time in hours, to a tenth under ten hours.</summary>
    public static string Hours(Duration length)
        => length.TotalHours >= 9.95 ? $"{Number(length.TotalHours, 0)} h" : $"{Number(Math.Round(length.TotalHours, 1))} h";

    /// <summary>"Mon 13 Oct 16:10".</summary>
    public static string Time(Instant instant, DateTimeZone zone) => TimePattern.Format(instant.InZone(zone).LocalDateTime);

    /// <summary>"Mon 13 Oct".</summary>
    public static string Day(LocalDate date) => DayPattern.Format(date);

    /// <summary>"16:10".</summary>
    public static string Clock(Instant instant, DateTimeZone zone) => ClockPattern.Format(instant.InZone(zone).TimeOfDay);

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
    };
}
