using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>What a time looks like, for messages.</summary>
internal static class StampExample
{
    /// <summary>In the formats of an export.</summary>
    public static string Of(TimeSettings settings) => string.Join(", or ", settings.Formats.Select(Of));

    private static string Of(string format) => format switch
    {
        StampWords.Iso => "an ISO 8601 time like 2025-10-13T14:05",
        StampWords.Excel1900 => "a number of days like 45943.5868",
        StampWords.Excel1904 => "a number of days like 44481.5868",
        StampWords.UnixSeconds => "a count of seconds like 1760364300",
        StampWords.UnixMilliseconds => "a count of milliseconds like 1760364300000",
        StampWords.UnixMicroseconds => "a count of microseconds like 1760364300000000",
        _ => $"a time like {format}",
    };
}
