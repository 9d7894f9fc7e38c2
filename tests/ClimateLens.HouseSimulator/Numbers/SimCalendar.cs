using NodaTime;

namespace ClimateLens.HouseSimulator.Numbers;

/// <summary>Minutes of a simulation against UTC and the local clock.</summary>
public sealed class SimCalendar
{
    private readonly int[] _offsetMinutes;
    private readonly LocalDateTime _utcStart;

    /// <param name="start">First minute.</param>
    /// <param name="end">End, exclusive.</param>
    /// <param name="zone">Zone of the local clock.</param>
    public SimCalendar(Instant start, Instant end, DateTimeZone zone)
    {
        Start = start;
        Minutes = (int)(end - start).TotalMinutes;
        _utcStart = start.InUtc().LocalDateTime;
        _offsetMinutes = new int[Minutes + 1];
        foreach (var span in zone.GetZoneIntervals(start, end + Duration.FromDays(1)))
        {
            int from = span.HasStart ? Math.Max(0, MinuteOf(span.Start)) : 0;
            int until = span.HasEnd ? Math.Min(Minutes + 1, MinuteOf(span.End)) : Minutes + 1;
            for (int minute = from; minute < until; minute++)
            {
                _offsetMinutes[minute] = span.WallOffset.Seconds / 60;
            }
        }
    }

    public Instant Start { get; }

    /// <summary>Length. [min]</summary>
    public int Minutes { get; }

    public Instant At(int minute) => Start + Duration.FromMinutes(minute);

    public LocalDateTime Local(int minute) => _utcStart.PlusMinutes(minute + _offsetMinutes[minute]);

    /// <summary>Minutes after local midnight by the clock on the wall. [min]</summary>
    public int LocalMinuteOfDay(int minute)
    {
        int utc = (_utcStart.Hour * 60) + _utcStart.Minute + minute + _offsetMinutes[minute];
        return ((utc % 1440) + 1440) % 1440;
    }

    /// <summary>Whole minutes from the start to an instant; may be negative.</summary>
    public int MinuteOf(Instant instant) => (int)(instant - Start).TotalMinutes;
}
