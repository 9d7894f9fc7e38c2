namespace ClimateLens.Logs.Times;

/// <summary>Days of the Gregorian calendar.</summary>
internal static class CivilDate
{
    /// <summary>Microseconds of a day.</summary>
    public const long DayMicros = 86_400_000_000;

    /// <summary>Microseconds of a second.</summary>
    public const long SecondMicros = 1_000_000;

    // Climate computers are younger than this, and no export reaches further; a stamp outside is a fault.
    private const int FirstYear = 1950;
    private const int LastYear = 2199;
    private const long FirstDay = -7_305; // 1950-01-01
    private const long LastDay = 84_005; // 2199-12-31
    private static readonly int[] DaysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

    /// <summary>Days since 1970-01-01; false for a date that does not exist or lies outside 1950 to 2199.</summary>
    public static bool TryDays(int year, int month, int day, out int days)
    {
        days = 0;
        if (year is < FirstYear or > LastYear || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month))
        {
            return false;
        }

        int before = year - 1;
        int leaps = (before / 4) - (before / 100) + (before / 400);
        bool pastLeapDay = month > 2 && DateTime.IsLeapYear(year);
        days = (before * 365) + leaps + DaysBefore[month - 1] + (pastLeapDay ? 1 : 0) + day - 719_163;
        return true;
    }

    /// <summary>Days since 1970-01-01 of a day of the year, counted from 1.</summary>
    public static bool TryDayOfYear(int year, int dayOfYear, out int days)
    {
        bool known = TryDays(year, 1, 1, out days) && dayOfYear >= 1 && dayOfYear <= (DateTime.IsLeapYear(year) ? 366 : 365);
        days += dayOfYear - 1;
        return known;
    }

    /// <summary>Whether a day lies in the years that are taken.</summary>
    /// <param name="days">Days since 1970-01-01. [d]</param>
    public static bool IsInRange(long days) => days is >= FirstDay and <= LastDay;

    /// <summary>The UTC year of an instant.</summary>
    public static int YearOf(long utcMicros) => DateTime.UnixEpoch.AddTicks(utcMicros * 10).Year;

    /// <summary>The first instant of a UTC year. [µs since 1970-01-01]</summary>
    public static long YearStart(int year) => (new DateTime(year, 1, 1, 0, 0, 0, DateTimeKind.Utc) - DateTime.UnixEpoch).Ticks / 10;

    /// <summary>Clock time of a day in µs; 24:00:00 is the end of the day. False when there is none such.</summary>
    public static bool TryTimeOfDay(int hour, int minute, int second, int micros, out long timeOfDay)
    {
        timeOfDay = (((hour * 60L) + minute) * 60 + second) * SecondMicros + micros;
        return minute < 60 && second < 60 && (hour < 24 || timeOfDay == DayMicros);
    }
}
