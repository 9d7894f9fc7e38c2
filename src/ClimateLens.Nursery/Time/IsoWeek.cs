using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using NodaTime;
using NodaTime.Calendars;

namespace ClimateLens.Nursery.Time;

/// <summary>A week by ISO 8601: Monday to Sunday, local days of the nursery.</summary>
/// <param name="Year">Week year, which is not always the calendar year of its days.</param>
/// <param name="Number">Week number, 1 to 53.</param>
public readonly record struct IsoWeek(int Year, int Number) : IComparable<IsoWeek>
{
    /// <summary>The calendar ends with 9999, and a week reaches into the next year.</summary>
    private const int LastYear = 9998;

    /// <summary>The Monday.</summary>
    public LocalDate Monday => WeekYearRules.Iso.GetLocalDate(Year, Number, IsoDayOfWeek.Monday);

    /// <summary>The week that holds a date.</summary>
    public static IsoWeek Of(LocalDate date) => new(WeekYearRules.Iso.GetWeekYear(date), WeekYearRules.Iso.GetWeekOfWeekYear(date));

    /// <summary>From local midnight on Monday to local midnight on the next Monday; 167 or 169 hours when the clocks change.</summary>
    public Interval In(DateTimeZone zone)
        => new(zone.AtStartOfDay(Monday).ToInstant(), zone.AtStartOfDay(Monday.PlusWeeks(1)).ToInstant());

    /// <summary>
    /// The weeks that lie wholly within an extent of readings. A first or last reading up to one hour inside the
    /// week still counts as covering it, since the last stamp of a week is one step before its end.
    /// </summary>
    /// <param name="first">First reading.</param>
    /// <param name="last">Last reading.</param>
    /// <param name="zone">The nursery's zone.</param>
    public static IEnumerable<IsoWeek> WholeWeeks(Instant first, Instant last, DateTimeZone zone)
    {
        Duration slack = Duration.FromHours(1);
        for (IsoWeek week = Of(first.InZone(zone).Date); ; week = Of(week.Monday.PlusWeeks(1)))
        {
            Interval span = week.In(zone);
            if (span.End > last + slack)
            {
                yield break;
            }

            if (first <= span.Start + slack)
            {
                yield return week;
            }
        }
    }

    /// <summary>Reads <c>2025-W42</c>. Refuses week 53 of a year that has 52, and years beyond 9998.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out IsoWeek week)
    {
        week = default;
        if (text is not { Length: 8 } || text[4] != '-' || (text[5] is not ('W' or 'w'))
            || !int.TryParse(text.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out int year)
            || !int.TryParse(text.AsSpan(6, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            || year is < 1 or > LastYear || number < 1 || number > WeekYearRules.Iso.GetWeeksInWeekYear(year))
        {
            return false;
        }

        week = new IsoWeek(year, number);
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(IsoWeek other) => (Year, Number).CompareTo((other.Year, other.Number));

    /// <summary>Orders by time.</summary>
    public static bool operator <(IsoWeek left, IsoWeek right) => left.CompareTo(right) < 0;

    /// <summary>Orders by time.</summary>
    public static bool operator >(IsoWeek left, IsoWeek right) => left.CompareTo(right) > 0;

    /// <summary>Orders by time.</summary>
    public static bool operator <=(IsoWeek left, IsoWeek right) => left.CompareTo(right) <= 0;

    /// <summary>Orders by time.</summary>
    public static bool operator >=(IsoWeek left, IsoWeek right) => left.CompareTo(right) >= 0;

    /// <summary>For example <c>2025-W42</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-W{Number:00}");
}
