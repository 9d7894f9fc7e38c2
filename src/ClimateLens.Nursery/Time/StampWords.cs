using System.Collections.Immutable;

namespace ClimateLens.Nursery.Time;

/// <summary>Words that stand for a whole way of writing a time, where no pattern of letters can.</summary>
public static class StampWords
{
    /// <summary>ISO 8601 with or without seconds and offset, 'T' or a blank between date and time, extended or basic.</summary>
    public const string Iso = "iso";

    /// <summary>Days of a spreadsheet that counts from 1900 (ECMA-376 Part 1, 18.17.4.1): 61 is 1 March 1900; 45943.5 is noon of 13 October 2025. [d]</summary>
    public const string Excel1900 = "excel1900";

    /// <summary>Days of a spreadsheet that counts from 1904 (ECMA-376 Part 1, 18.17.4.1): 0 is 1 January 1904. [d]</summary>
    public const string Excel1904 = "excel1904";

    /// <summary>Seconds since 1970-01-01T00:00Z (IEEE 1003.1, "Seconds Since the Epoch"), with or without a fraction. [s]</summary>
    public const string UnixSeconds = "unixSeconds";

    /// <summary>The same in milliseconds. [ms]</summary>
    public const string UnixMilliseconds = "unixMilliseconds";

    /// <summary>The same in microseconds. [µs]</summary>
    public const string UnixMicroseconds = "unixMicroseconds";

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } = [Iso, Excel1900, Excel1904, UnixSeconds, UnixMilliseconds, UnixMicroseconds];

    /// <summary>Whether a format is one of the words.</summary>
    public static bool Contains(string format) => All.Contains(format);

    /// <summary>Whether a word counts from an instant, so that no zone is needed.</summary>
    public static bool IsUnix(string format) => format is UnixSeconds or UnixMilliseconds or UnixMicroseconds;

    /// <summary>Whether a word counts days of a spreadsheet.</summary>
    public static bool IsSerial(string format) => format is Excel1900 or Excel1904;
}
