using NodaTime;

namespace ClimateLens.Nursery.Settings;

/// <summary>A time of day at which pots are to be checked.</summary>
/// <param name="Name">What people read.</param>
/// <param name="From">First moment, by the clock on the wall.</param>
/// <param name="To">Last moment; after <paramref name="From"/>.</param>
public sealed record PotRound(string Name, LocalTime From, LocalTime To)
{
    /// <summary>Whether a time of day belongs to the round, both ends included.</summary>
    public bool Holds(LocalTime time) => time >= From && time <= To;
}
