using ClimateLens.Nursery;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>The waterings of run-in and period, from logs, valves and water meters, each once and in time order.</summary>
internal static class AllWaterings
{
    /// <summary>Joins them.</summary>
    /// <param name="input">Settings, readings and records of the house.</param>
    /// <param name="metered">What its water meters tell.</param>
    public static IEnumerable<WateringEvent> Of(HouseInput input, IEnumerable<WateringEvent> metered)
        => OneOfEach.WithMeters(OneOfEach.Of([.. LoggedWaterings.Of(input)], [.. ValveWaterings.Of(input)]), [.. metered]);
}
