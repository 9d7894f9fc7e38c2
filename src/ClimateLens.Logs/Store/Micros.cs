using NodaTime;

namespace ClimateLens.Logs.Store;

/// <summary>Between the store's microseconds and other forms of an instant.</summary>
internal static class Micros
{
    /// <summary>As an instant.</summary>
    public static Instant ToInstant(long micros) => Instant.FromUnixTimeTicks(micros * 10);

    /// <summary>From an instant, cut to microseconds.</summary>
    public static long Of(Instant instant) => (long)Math.Floor(instant.ToUnixTimeTicks() / 10m);

    /// <summary>As a UTC date and time.</summary>
    public static DateTime ToDateTime(long micros) => DateTime.UnixEpoch.AddTicks(micros * 10);

    /// <summary>From a UTC date and time.</summary>
    public static long Of(DateTime utc) => (utc - DateTime.UnixEpoch).Ticks / 10;
}
