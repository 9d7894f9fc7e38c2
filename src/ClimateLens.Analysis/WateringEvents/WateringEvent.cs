using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>A watering as a log or a valve tells of it.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End, or null when neither end nor duration is known.</param>
/// <param name="Method">How the water came, or null when that is not told.</param>
/// <param name="Bench">Bench or section; empty for the whole house.</param>
/// <param name="Litres">Amount, or null. [L]</param>
/// <param name="Source">Where it comes from, for people.</param>
internal sealed record WateringEvent(Instant Start, Instant? End, WateringMethod? Method, string Bench, double? Litres, string Source)
{
    /// <summary>The log's word for the method when it is not known; empty when known or not told.</summary>
    public string UnknownMethod { get; init; } = "";

    /// <summary>Whether water stood on a bench or a floor.</summary>
    public bool IsFlood => Method is WateringMethod.EbbAndFlow or WateringMethod.FloodFloor;

    /// <summary>Whether two events can be the same watering: same method, and no two different benches.</summary>
    public bool IsLike(WateringEvent other)
        => Method == other.Method && (Bench == other.Bench || Bench.Length == 0 || other.Bench.Length == 0);

    /// <summary>Whether two events overlap when each may be off by <paramref name="slack"/>.</summary>
    public bool Overlaps(WateringEvent other, Duration slack)
        => Start - slack < (other.End ?? other.Start) && other.Start < (End ?? Start) + slack;
}
