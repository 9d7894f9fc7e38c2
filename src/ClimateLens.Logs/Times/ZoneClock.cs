using NodaTime;
using NodaTime.TimeZones;

namespace ClimateLens.Logs.Times;

/// <summary>What a local time means.</summary>
internal enum LocalMeaning
{
    /// <summary>One instant.</summary>
    Once,

    /// <summary>None: the clock skipped it in spring.</summary>
    Skipped,

    /// <summary>Two: the clock showed it twice in autumn.</summary>
    Twice,
}

/// <summary>
/// Maps the local times of a zone to instants, strictly: it never picks one of two and never shifts a time that did
/// not exist. Keeps the stretch around the last answer, since rows of a file lie close together.
/// </summary>
/// <param name="zone">Zone of the stamps.</param>
internal sealed class ZoneClock(DateTimeZone zone)
{
    private long _from = 1;
    private long _to;
    private long _offset;

    /// <summary>Maps a local time.</summary>
    /// <param name="localMicros">Clock time as if it were UTC. [µs]</param>
    /// <param name="early">The instant; the first one when there are two. [µs]</param>
    /// <param name="late">The second instant when there are two, else the same. [µs]</param>
    public LocalMeaning Map(long localMicros, out long early, out long late)
    {
        if (localMicros >= _from && localMicros < _to)
        {
            early = late = localMicros - _offset;
            return LocalMeaning.Once;
        }

        return MapSlowly(localMicros, out early, out late);
    }

    /// <summary>The first instant of the local day that holds a local time, for dates without a time of day. [µs]</summary>
    public long StartOfDay(long localMicros) => Micros(zone.AtStartOfDay(Local(localMicros).Date).ToInstant());

    private LocalMeaning MapSlowly(long localMicros, out long early, out long late)
    {
        ZoneLocalMapping mapping = zone.MapLocal(Local(localMicros));
        early = late = 0;
        if (mapping.Count == 0)
        {
            return LocalMeaning.Skipped;
        }

        early = localMicros - Micros(mapping.EarlyInterval.WallOffset);
        late = localMicros - Micros(mapping.LateInterval.WallOffset);
        if (mapping.Count == 2)
        {
            return LocalMeaning.Twice;
        }

        Keep(mapping.EarlyInterval);
        return LocalMeaning.Once;
    }

    /// <summary>Keeps the local times of an interval that no neighbour shares.</summary>
    private void Keep(ZoneInterval interval)
    {
        _offset = Micros(interval.WallOffset);
        _from = long.MinValue;
        _to = long.MaxValue;
        if (interval.HasStart)
        {
            ZoneInterval before = zone.GetZoneInterval(interval.Start - Duration.Epsilon);
            _from = Micros(interval.Start) + Math.Max(_offset, Micros(before.WallOffset));
        }

        if (interval.HasEnd)
        {
            ZoneInterval after = zone.GetZoneInterval(interval.End);
            _to = Micros(interval.End) + Math.Min(_offset, Micros(after.WallOffset));
        }
    }

    private static LocalDateTime Local(long localMicros) => Instant.FromUnixTimeTicks(localMicros * 10).InUtc().LocalDateTime;

    private static long Micros(Instant instant) => instant.ToUnixTimeTicks() / 10;

    private static long Micros(Offset offset) => offset.Seconds * CivilDate.SecondMicros;
}
