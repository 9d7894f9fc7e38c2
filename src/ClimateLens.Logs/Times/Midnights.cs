using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Times;

/// <summary>
/// Spreadsheets write midnight as the date alone. Where a file was seen to write its time of day, a date alone is no midnight but a time that
/// lost its end.
/// </summary>
internal sealed class Midnights
{
    private bool _haveTimes;

    /// <summary>Whether the time of the current row, as read, may stand.</summary>
    public bool Fit(ExportTable table, TimeColumns time, LocalStamp stamp)
    {
        if (stamp.LocalMicros % CivilDate.DayMicros != 0 || table.HasIsoTimes)
        {
            return true;
        }

        bool bare = time.IsBareDate(table, stamp);
        _haveTimes |= !bare;
        return !bare || !_haveTimes;
    }
}
