using System.Globalization;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>A way of writing times: the cells of a row, the headers of their columns, and the format that reads them.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Write">From a time, a language and a decimal mark to cells.</param>
/// <param name="Headers">From a language to headers.</param>
/// <param name="Format">Format in a nursery file.</param>
internal sealed record MakerStamp(string Name, Func<DateTime, string, char, string[]> Write, Func<string, string[]> Headers, string Format)
{
    /// <summary>All ways.</summary>
    public static readonly MakerStamp[] All =
    [
        One("yyyy-MM-dd HH:mm"), One("yyyy-MM-ddTHH:mm:ss"), One("yyyy-MM-ddTHH:mm:ssZ"), One("yyyy/MM/dd HH:mm"), One("dd-MM-yyyy HH:mm"), One("d-M-yyyy H:mm"),
        One("dd/MM/yyyy HH:mm:ss"), One("d/M/yyyy HH:mm"), One("M/d/yyyy H:mm"), One("MM/dd/yyyy HH:mm"), One("M/d/yy h:mm tt"), One("MM/dd/yyyy hh:mm:ss tt"), One("dd.MM.yyyy HH:mm"),
        One("dd.MM.yy HH:mm"), One("yy-MM-dd HH:mm"), One("yyyyMMddHHmm"), One("yyyyMMddHHmmss"), One("HH:mm dd-MM-yyyy"), One("dd-MM-yyyy HH.mm"),
        Two("yyyy-MM-dd", "HH:mm:ss"), Two("dd-MM-yyyy", "HH:mm"), Two("d.M.yyyy", "H:mm"), Two("MM/dd/yyyy", "HH:mm"), Two("yyyyMMdd", "HHmm"), Two("dd/MM/yy", "HH:mm"),
        One("dd/MM HH:mm"), One("d.M. H:mm"),
        new("day month year by name", (t, l, _) => [string.Create(CultureInfo.InvariantCulture, $"{t.Day} {MakerWords.Months[l][t.Month - 1]} {t.Year} {t:HH:mm}")], l => [MakerWords.Times[l][0]], "d MMM yyyy HH:mm"),
        new("serial", (t, _, mark) => [(t.ToOADate()).ToString("0.000000", CultureInfo.InvariantCulture).Replace('.', mark)], l => [MakerWords.Times[l][0]], "excel1900"),
        new("seconds", (t, _, _) => [((long)(t - DateTime.UnixEpoch).TotalSeconds).ToString(CultureInfo.InvariantCulture)], _ => ["timestamp"], "unixSeconds"),
        new("milliseconds", (t, _, _) => [((long)(t - DateTime.UnixEpoch).TotalMilliseconds).ToString(CultureInfo.InvariantCulture)], _ => ["timestamp"], "unixMilliseconds"),
        new("year, day, HHMM", (t, _, _) => [$"{t.Year}", $"{t.DayOfYear}", ((t.Hour * 100) + t.Minute).ToString(CultureInfo.InvariantCulture)], _ => ["Year", "Day of year", "Time"], "yyyy D HHmm"),
        new("year, month, day, hour, minute", (t, _, _) => [$"{t.Year}", $"{t.Month}", $"{t.Day}", $"{t.Hour}", $"{t.Minute}"], _ => ["Year", "Month", "Day", "Hour", "Minute"], "yyyy M d H m"),
    ];

    /// <summary>Whether the stamps are UTC whatever the clock of the nursery.</summary>
    public bool IsUtc => Format is "unixSeconds" or "unixMilliseconds" || Name.EndsWith('Z');

    /// <summary>Whether the stamps name no year.</summary>
    public bool LacksYear => Format is "dd/MM HH:mm" or "d.M. H:mm";

    /// <summary>Whether midnight may be written as the end of the day before.</summary>
    public bool CanBeLate => Late("en", DateTime.UnixEpoch) is not null;

    /// <summary>Whether midnight may be written as the date alone, as spreadsheets do, by the format that this gives.</summary>
    public string? BareFormat => IsUtc || LacksYear || Name.Contains(',', StringComparison.Ordinal) ? null : Format == "iso" ? "iso" : Format.EndsWith(" HH:mm", StringComparison.Ordinal) ? Format[..^6] : null;

    /// <summary>The way of writing with month and day in each other's place; null where there is none that could be taken for it.</summary>
    public string? Swapped => Name switch
    {
        "dd/MM/yyyy HH:mm:ss" => "MM/dd/yyyy HH:mm:ss",
        "d/M/yyyy HH:mm" => "M/d/yyyy HH:mm",
        "dd-MM-yyyy HH:mm" => "MM-dd-yyyy HH:mm",
        _ => null,
    };

    /// <summary>The cells of a midnight as 24:00 of the day before; null where this way has no such hour.</summary>
    public string[]? Late(string language, DateTime time)
    {
        string[] cells = Write(time.AddDays(-1), language, '.');
        string last = cells[^1];
        string? late = Name switch
        {
            "year, day, HHMM" => "2400",
            "yyyyMMddHHmm" or "yyyyMMdd, HHmm" => last[..^4] + "2400",
            _ when cells.Length < 5 && last.EndsWith("00:00:00", StringComparison.Ordinal) => last[..^8] + "24:00:00",
            _ when cells.Length < 5 && last.EndsWith("00:00", StringComparison.Ordinal) => last[..^5] + "24:00",
            _ => null,
        };
        return late is null ? null : [.. cells[..^1], late];
    }

    private static MakerStamp One(string format) => new(
        format,
        (t, _, _) => [t.ToString(format.Replace("T", "'T'", StringComparison.Ordinal).Replace("Z", "'Z'", StringComparison.Ordinal), CultureInfo.InvariantCulture)],
        l => [MakerWords.Times[l][0]],
        format.StartsWith("yyyy-MM-dd", StringComparison.Ordinal) ? "iso" : format.Replace("tt", "a", StringComparison.Ordinal));

    private static MakerStamp Two(string date, string time)
        => new($"{date}, {time}", (t, _, _) => [t.ToString(date, CultureInfo.InvariantCulture), t.ToString(time, CultureInfo.InvariantCulture)], l => MakerWords.Times[l][1..], $"{date} {time}");
}
