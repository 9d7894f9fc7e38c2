using ClimateLens.HouseSimulator.Crop;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Watering;

/// <summary>The habit of House 2: valve A, then valve B, in whole five minutes, done before eleven. The leaves stay dry.</summary>
/// <param name="litresPerMinute">Flow of a valve. [L/min]</param>
/// <param name="benchAreaM2">Area that a valve serves. [m²]</param>
public sealed class DripWatering(double litresPerMinute, double benchAreaM2) : IWateringPlan
{
    private const double DryLevel = 2.75;

    public IEnumerable<WateringEvent> Decide(LocalDate date, int midnightMinute, PotBench pots, double potsPerM2, SeededRandom random)
    {
        int start = midnightMinute + 455 + (5 * (int)(random.NextDouble() * 24));
        foreach (string bench in (string[])["A", "B"])
        {
            double mean = pots.BenchMeanMl(bench);
            if (PotBench.Level(mean) >= DryLevel)
            {
                continue;
            }

            double litres = Math.Max(0, PotBench.ContainerMl - 15 - mean) / 1000 * potsPerM2 * benchAreaM2;
            int minutes = Math.Clamp(5 * (int)Math.Round(litres / litresPerMinute / 5), 5, 30);
            yield return new WateringEvent(start, minutes, "drip", minutes * litresPerMinute / benchAreaM2, bench, "");
            start += minutes + 5;
        }
    }
}
