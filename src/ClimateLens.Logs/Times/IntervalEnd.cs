using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Times;

/// <summary>The end of each row's interval: checked against its start, and no more, as the next row tells where the next interval starts.</summary>
/// <param name="fields">Where it stands.</param>
/// <param name="clock">The clock of the export; its own, as it runs ahead of the start's.</param>
internal sealed class IntervalEnd(JoinedFields fields, ZoneClock clock)
{
    private const long HalfYear = 183 * CivilDate.DayMicros;

    /// <summary>Where it stands.</summary>
    public JoinedFields Fields => fields;

    /// <summary>
    /// Whether the current row's end can be read and is not before its start. A bare time of day is the first such time from the start on, so it
    /// always follows; in the repeated hour an end follows when one of its two meanings does.
    /// </summary>
    /// <param name="table">The row.</param>
    /// <param name="format">Format of its start.</param>
    /// <param name="start">Its start.</param>
    public bool Follows(ExportTable table, StampParser format, LocalStamp start)
    {
        if (!fields.TryText(table, out ReadOnlySpan<byte> text))
        {
            return false;
        }

        if (!format.TryRead(text, out LocalStamp end))
        {
            return format.TryReadTimeOfDay(text, out _);
        }

        if (format.LacksYear && start.LocalMicros - end.LocalMicros > HalfYear)
        {
            return true; // the interval runs over the new year
        }

        return Latest(end, start.LocalMicros) >= Earliest(start);
    }

    private long Earliest(LocalStamp stamp)
    {
        if (stamp.OffsetSeconds is int offset)
        {
            return stamp.LocalMicros - (offset * CivilDate.SecondMicros);
        }

        // A start that the clock skipped is set aside by itself.
        return clock.Map(stamp.LocalMicros, out long early, out _) == LocalMeaning.Skipped ? long.MinValue : early;
    }

    private long Latest(LocalStamp stamp, long startLocal)
    {
        if (stamp.OffsetSeconds is int offset)
        {
            return stamp.LocalMicros - (offset * CivilDate.SecondMicros);
        }

        LocalMeaning meaning = clock.Map(stamp.LocalMicros, out _, out long late);
        return meaning != LocalMeaning.Skipped ? late : stamp.LocalMicros >= startLocal ? long.MaxValue : long.MinValue;
    }
}
