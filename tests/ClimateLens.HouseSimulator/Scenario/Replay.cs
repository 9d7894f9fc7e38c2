using ClimateLens.HouseSimulator.Watering;
using ClimateLens.HouseSimulator.Weather;

namespace ClimateLens.HouseSimulator.Scenario;

/// <summary>
/// The same house under the same weather once more, with something done otherwise: what the difference comes to is
/// the true effect, which tests hold estimates to.
/// </summary>
public static class Replay
{
    /// <summary>The house again with these waterings instead of its own.</summary>
    public static HouseRun With(HouseRun run, WeatherPoint[] weather, ulong seed, IEnumerable<WateringEvent> waterings)
        => HouseSimulation.Run(run.Options with { Watering = new ListedWatering([.. waterings]) }, run.Calendar, weather, seed);

    /// <summary>Waterings that start after a time of day, moved to that many minutes earlier; the others as they were.</summary>
    /// <param name="run">The house as it was.</param>
    /// <param name="afterMinuteOfDay">Minutes after local midnight. [min]</param>
    /// <param name="earlierBy">How much earlier. [min]</param>
    public static IEnumerable<WateringEvent> Earlier(HouseRun run, int afterMinuteOfDay, int earlierBy)
        => run.Waterings.Select(w => run.Calendar.LocalMinuteOfDay(w.StartMinute) < afterMinuteOfDay
            ? w
            : w with { StartMinute = w.StartMinute - earlierBy });

    /// <summary>
    /// The water of each overhead watering that pots catch, at the same time of day by drip, so that leaves and floor stay dry.
    /// </summary>
    /// <param name="run">The house as it was.</param>
    /// <param name="shareCaught">Share of the water that reached the pots. [1]</param>
    public static IEnumerable<WateringEvent> OffLeaves(HouseRun run, double shareCaught)
        => run.Waterings.Select(w => w.IsOverhead ? w with { Method = "drip", LitresPerM2 = w.LitresPerM2 * shareCaught } : w);
}
