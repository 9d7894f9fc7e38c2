namespace ClimateLens.Logs.Times;

/// <summary>A stamp as written.</summary>
/// <param name="LocalMicros">Its clock time as if it were UTC. [µs since 1970-01-01]</param>
/// <param name="OffsetSeconds">The offset from UTC that it names, or null: the export's zone holds. [s]</param>
internal readonly record struct LocalStamp(long LocalMicros, int? OffsetSeconds);
