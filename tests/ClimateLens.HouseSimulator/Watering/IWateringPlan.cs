using ClimateLens.HouseSimulator.Crop;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Watering;

/// <summary>Decides what a day's waterings are.</summary>
public interface IWateringPlan
{
    /// <summary>Called once a day at four in the morning, local time. An event given twice is taken once.</summary>
    /// <param name="date">The local day.</param>
    /// <param name="midnightMinute">Minute of the simulation at which the local day began. [min]</param>
    /// <param name="pots">How wet the pots are.</param>
    /// <param name="potsPerM2">How many stand on a square metre. [1/m²]</param>
    /// <param name="random">The house's watering stream.</param>
    IEnumerable<WateringEvent> Decide(LocalDate date, int midnightMinute, PotBench pots, double potsPerM2, SeededRandom random);
}

/// <summary>Waterings that are fixed beforehand, for what-ifs; those before the first decision are left out.</summary>
public sealed class ListedWatering(IReadOnlyList<WateringEvent> events) : IWateringPlan
{
    private const int LongestDayMin = 25 * 60; // when the clocks go back

    public IEnumerable<WateringEvent> Decide(LocalDate date, int midnightMinute, PotBench pots, double potsPerM2, SeededRandom random)
        => events.Where(e => e.StartMinute >= midnightMinute + 240 && e.StartMinute < midnightMinute + 240 + LongestDayMin);
}
