using System.Globalization;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Store;

/// <summary>Between the store's microseconds and other forms of an instant.</summary>
internal static class Micros
{
    /// <summary>As an instant.</summary>
    public static Instant ToInstant(long micros) => Instant.FromUnixTimeTicks(micros * 10);

    /// <summary>From an instant, cut to microseconds.</summary>
    public static long Of(Instant instant) => (long)Math.Floor(instant.ToUnixTimeTicks() / 10m);

    /// <summary>How far behind a time the stamps of an export begin that belong to what follows it: a stamp that ends its interval belongs to what lies before it. [µs]</summary>
    public static long ShiftOf(ExportSettings export) => export.StampSide == StampSide.IntervalEnd ? 1 : 0;

    /// <summary>As a UTC date and time.</summary>
    public static DateTime ToDateTime(long micros) => DateTime.UnixEpoch.AddTicks(micros * 10);

    /// <summary>As the store and the set-aside files write it: <c>2025-10-13T14:05:00Z</c>, fractions only where there are some.</summary>
    public static string ToIso(long micros) => ToDateTime(micros).ToString("yyyy-MM-dd'T'HH:mm:ss.FFFFFF'Z'", CultureInfo.InvariantCulture);

    /// <summary>From a UTC date and time.</summary>
    public static long Of(DateTime utc) => (utc - DateTime.UnixEpoch).Ticks / 10;
}
