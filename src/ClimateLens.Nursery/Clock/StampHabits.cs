using NodaTime;
using NodaTime.TimeZones;

namespace ClimateLens.Nursery.Clock;

/// <summary>What stamps alone tell of a wrong format: no light is needed for it.</summary>
internal sealed class StampHabits
{
    /// <summary>Fewest days on which lost AM and PM are claimed. [d]</summary>
    private const int FewestDays = 3;

    /// <summary>Days from the first to the last from which on a record without any day after the twelfth is odd. [d]</summary>
    private const int LongSpan = 32;

    private readonly List<int> _dates = [];
    private readonly bool[] _hours = new bool[24];

    /// <summary><see cref="ClockVerdict.HalfDay"/>, <see cref="ClockVerdict.SwappedDates"/>, or null when the stamps look sound.</summary>
    /// <param name="utcMicros">Stamps, ascending. [µs after 1970-01-01 00:00 UTC]</param>
    /// <param name="zone">Zone of the stamps.</param>
    public static ClockVerdict? Of(ReadOnlySpan<long> utcMicros, DateTimeZone zone)
    {
        StampHabits habits = new();
        habits.Take(utcMicros, zone);
        return habits.IsHalfDay() ? ClockVerdict.HalfDay : habits.IsSwapped() ? ClockVerdict.SwappedDates : null;
    }

    private void Take(ReadOnlySpan<long> utcMicros, DateTimeZone zone)
    {
        const long hour = 3_600_000_000, day = 24 * hour;
        long until = long.MinValue, offset = 0;
        int last = int.MinValue;
        foreach (long utc in utcMicros)
        {
            if (utc >= until)
            {
                ZoneInterval interval = zone.GetZoneInterval(Instant.FromUnixTimeTicks(utc * 10));
                offset = interval.WallOffset.Seconds * 1_000_000L;
                until = interval.HasEnd ? interval.End.ToUnixTimeTicks() / 10 : long.MaxValue;
            }

            long local = utc + offset;
            int date = (int)Math.Floor(local / (double)day);
            _hours[(int)((local - (date * day)) / hour)] = true;
            if (date != last)
            {
                _dates.Add(date);
                last = date;
            }
        }
    }

    /// <summary>Every hour from 1 to 12 and no other: 00:30 and 12:30 both read 12:30, 13:30 reads 01:30.</summary>
    private bool IsHalfDay()
        => _dates.Count >= FewestDays && Enumerable.Range(0, 24).All(hour => _hours[hour] == hour is >= 1 and <= 12);

    /// <summary>No date after the twelfth in more than a month, and more of the dates follow each other with day and month swapped than as they stand.</summary>
    private bool IsSwapped()
    {
        if (_dates.Count < FewestDays || _dates[^1] - _dates[0] < LongSpan)
        {
            return false;
        }

        LocalDate epoch = new(1970, 1, 1);
        LocalDate[] dates = [.. _dates.Distinct().Order().Select(d => epoch.PlusDays(d))];
        if (dates.Any(d => d.Day > 12))
        {
            return false;
        }

        LocalDate[] swapped = [.. dates.Select(d => new LocalDate(d.Year, d.Day, d.Month)).Order()];
        return Followers(swapped) > 1.25 * Followers(dates) && Followers(swapped) >= dates.Length / 2;
    }

    private static int Followers(LocalDate[] dates)
    {
        int followers = 0;
        for (int i = 1; i < dates.Length; i++)
        {
            followers += dates[i] == dates[i - 1].PlusDays(1) ? 1 : 0;
        }

        return followers;
    }
}
