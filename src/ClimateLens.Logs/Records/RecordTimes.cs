using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Records;

/// <summary>Reads the times that stand in a record beside its own, such as the end of a watering.</summary>
internal sealed class RecordTimes
{
    private readonly ZoneClock _clock;
    private readonly StampParser _whole;

    /// <summary>For the time settings of an export whose pattern was compiled.</summary>
    public RecordTimes(TimeSettings settings, StampParser pattern)
    {
        _clock = new ZoneClock(settings.Zone);
        _whole = pattern;
        Zone = settings.Zone;
    }

    private NodaTime.DateTimeZone Zone { get; }

    /// <summary>
    /// Reads a time in the pattern of the export, or a time of day: then the first such time at or after the record's
    /// own. Of two meanings of a repeated hour it takes the first that is not before the record's own.
    /// </summary>
    public bool TryRead(ReadOnlySpan<byte> cell, long startUtc, out long utc)
    {
        utc = 0;
        if (_whole.TryRead(cell, out LocalStamp stamp))
        {
            return TryMap(stamp, startUtc, out utc);
        }

        if (!_whole.TryReadTimeOfDay(cell, out long timeOfDay))
        {
            return false;
        }

        long local = startUtc + (Zone.GetUtcOffset(Store.Micros.ToInstant(startUtc)).Seconds * CivilDate.SecondMicros);
        long midnight = local - (((local % CivilDate.DayMicros) + CivilDate.DayMicros) % CivilDate.DayMicros);
        long end = midnight + timeOfDay;
        return TryMap(new LocalStamp(end < local ? end + CivilDate.DayMicros : end, null), startUtc, out utc);
    }

    private bool TryMap(LocalStamp stamp, long startUtc, out long utc)
    {
        if (stamp.OffsetSeconds is int offset)
        {
            utc = stamp.LocalMicros - (offset * CivilDate.SecondMicros);
            return true;
        }

        LocalMeaning meaning = _clock.Map(stamp.LocalMicros, out utc, out long late);
        utc = meaning == LocalMeaning.Twice && utc < startUtc ? late : utc;
        return meaning != LocalMeaning.Skipped;
    }
}
