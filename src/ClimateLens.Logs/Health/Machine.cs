using NodaTime;
using NodaTime.TimeZones;

namespace ClimateLens.Logs.Health;

/// <summary>What the machine says of itself; given in, so that a test can say otherwise.</summary>
/// <param name="Now">Time of the system clock.</param>
/// <param name="FreeBytes">Bytes that may still be written beneath an existing folder; null where the system does not tell.</param>
/// <param name="ZoneData">Version of the time-zone data, such as <c>2025b</c>: a year and a letter.</param>
public sealed record Machine(Instant Now, Func<string, long?> FreeBytes, string ZoneData)
{
    /// <summary>Version of the time-zone data that travel with the program.</summary>
    public static string ZoneVersion => TzdbDateTimeZoneSource.Default.TzdbVersion;

    /// <summary>The machine that this runs on.</summary>
    /// <param name="now">Time of its clock.</param>
    public static Machine Here(Instant now) => new(now, FreeBeneath, ZoneVersion);

    private static long? FreeBeneath(string folder)
    {
        try
        {
            return new DriveInfo(folder).AvailableFreeSpace;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }
}
