using System.Collections.Immutable;

namespace ClimateLens.Nursery.Time;

/// <summary>
/// Readings of one source, columnar, in ascending time without repeats, in SI units, as stored.
/// Every column has as many values as <see cref="UtcMicros"/>; NaN means missing.
/// </summary>
/// <param name="House">House id, or <see cref="WholeNursery"/> for a source that serves every house (weather).</param>
/// <param name="Source">Name of the export that it came from.</param>
/// <param name="StampSide">What a stamp labels.</param>
/// <param name="StepSeconds">Nominal step of the source. [s]</param>
/// <param name="UtcMicros">Stamps, microseconds since 1970-01-01T00:00Z. [µs]</param>
/// <param name="Columns">Values by column.</param>
public sealed record ReadingBatch(
    string House,
    string Source,
    StampSide StampSide,
    int StepSeconds,
    long[] UtcMicros,
    ImmutableSortedDictionary<string, double[]> Columns)
{
    /// <summary>House id of sources that serve the whole nursery; no house may be called so.</summary>
    public const string WholeNursery = "nursery";
}
