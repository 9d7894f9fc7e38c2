using System.Globalization;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>A way of writing times: the cells of a row, and the headers of their columns.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Write">From a time, a language and a decimal mark to cells.</param>
/// <param name="Headers">From a language to headers.</param>
internal sealed record MakerStamp(string Name, Func<DateTime, string, char, string[]> Write, Func<string, string[]> Headers)
{
    /// <summary>All ways.</summary>
    public static readonly MakerStamp[] All =
    [
        One("yyyy-MM-dd HH:mm"), One("yyyy-MM-ddTHH:mm:ss"), One("yyyy-MM-ddTHH:mm:ssZ"), One("yyyy/MM/dd HH:mm"), One("dd-MM-yyyy HH:mm"), One("d-M-yyyy H:mm"),
        One("dd/MM/yyyy HH:mm:ss"), One("d/M/yyyy HH:mm"), One("M/d/yyyy H:mm"), One("MM/dd/yyyy HH:mm"), One("M/d/yy h:mm tt"), One("MM/dd/yyyy hh:mm:ss tt"), One("dd.MM.yyyy HH:mm"),
        One("dd.MM.yy HH:mm"), One("yy-MM-dd HH:mm"), One("yyyyMMddHHmm"), One("yyyyMMddHHmmss"), One("HH:mm dd-MM-yyyy"), One("dd-MM-yyyy HH.mm"),
        Two("yyyy-MM-dd", "HH:mm:ss"), Two("dd-MM-yyyy", "HH:mm"), Two("d.M.yyyy", "H:mm"), Two("MM/dd/yyyy", "HH:mm"), Two("yyyyMMdd", "HHmm"), Two("dd/MM/yy", "HH:mm"),
        new("day month year by name", (t, l, _) => [string.Create(CultureInfo.InvariantCulture, $"{t.Day} {MakerWords.Months[l][t.Month - 1]} {t.Year} {t:HH:mm}")], l => [MakerWords.Times[l][0]]),
        new("serial", (t, _, mark) => [(t.ToOADate()).ToString("0.000000", CultureInfo.InvariantCulture).Replace('.', mark)], l => [MakerWords.Times[l][0]]),
        new("seconds", (t, _, _) => [((long)(t - DateTime.UnixEpoch).TotalSeconds).ToString(CultureInfo.InvariantCulture)], _ => ["timestamp"]),
        new("milliseconds", (t, _, _) => [((long)(t - DateTime.UnixEpoch).TotalMilliseconds).ToString(CultureInfo.InvariantCulture)], _ => ["timestamp"]),
        new("year, day, HHMM", (t, _, _) => [$"{t.Year}", $"{t.DayOfYear}", ((t.Hour * 100) + t.Minute).ToString(CultureInfo.InvariantCulture)], _ => ["Year", "Day of year", "Time"]),
        new("year, month, day, hour, minute", (t, _, _) => [$"{t.Year}", $"{t.Month}", $"{t.Day}", $"{t.Hour}", $"{t.Minute}"], _ => ["Year", "Month", "Day", "Hour", "Minute"]),
    ];

    private static MakerStamp One(string format) => new(format, (t, _, _) => [t.ToString(format.Replace("T", "'T'", StringComparison.Ordinal).Replace("Z", "'Z'", StringComparison.Ordinal), CultureInfo.InvariantCulture)], l => [MakerWords.Times[l][0]]);

    private static MakerStamp Two(string date, string time)
        => new($"{date}, {time}", (t, _, _) => [t.ToString(date, CultureInfo.InvariantCulture), t.ToString(time, CultureInfo.InvariantCulture)], l => MakerWords.Times[l][1..]);
}
