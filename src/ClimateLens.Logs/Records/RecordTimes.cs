using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Records;

/// <summary>Reads the times that stand in a record beside its own, such as the end of a watering.</summary>
/// <param name="settings">Time settings of the export.</param>
/// <param name="times">The record's own time, whose format holds for its other times too.</param>
internal sealed class RecordTimes(TimeSettings settings, TimeColumns times)
{
    private readonly ZoneClock _clock = new(settings.Zone);

    /// <summary>
    /// Reads a time in the pattern of the export, or a time of day: then the first such time at or after the record's
    /// own. Of two meanings of a repeated hour it takes the first that is not before the record's own.
    /// </summary>
    public bool TryRead(ReadOnlySpan<byte> cell, long startUtc, out long utc)
    {
        utc = 0;
        if (times.Pattern.TryRead(cell, out LocalStamp stamp))
        {
            return TryMap(stamp, startUtc, out utc);
        }

        if (!times.Pattern.TryReadTimeOfDay(cell, out long timeOfDay))
        {
            return false;
        }

        long local = startUtc + (settings.Zone.GetUtcOffset(Store.Micros.ToInstant(startUtc)).Seconds * CivilDate.SecondMicros);
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
