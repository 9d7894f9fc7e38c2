using ClimateLens.Nursery;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>The waterings of run-in and period, from logs and valves, each once and in time order.</summary>
internal static class AllWaterings
{
    public static IEnumerable<WateringEvent> Of(HouseInput input)
        => OneOfEach.Of([.. LoggedWaterings.Of(input)], [.. ValveWaterings.Of(input)]);
}
