using ClimateLens.HouseSimulator.Crop;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.HouseSimulator.Watering;

/// <summary>
/// The habit of House 1: when pots feel middling dry, the boom goes over bench A and then bench B, on most days not
/// before the other work is done, after three in the afternoon. Now and then dry corners get the hose.
/// </summary>
/// <param name="lateShare">Share of working days on which it runs late. [1]</param>
public sealed class BoomWatering(double lateShare) : IWateringPlan
{
    private const double DryLevel = 3.0, PotsCatch = 1.15;

    public IEnumerable<WateringEvent> Decide(LocalDate date, int midnightMinute, PotBench pots, double potsPerM2, SeededRandom random)
    {
        bool weekend = date.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday;
        double lateness = random.NextDouble(), hour = random.NextDouble(), hose = random.NextDouble();
        double largestDose = random.NextUniform(4.0, 6.5);
        bool late = lateness < (weekend ? lateShare / 2 : lateShare);
        int start = midnightMinute + (int)(late ? 905 + (hour * 130) : 450 + (hour * 140));
        double level = PotBench.Level(pots.MeanMl);
        if (level < (weekend ? DryLevel - 0.15 : DryLevel))
        {
            double wanted = Math.Max(0, PotBench.ContainerMl - 25 - pots.MeanMl) / 1000 * potsPerM2;
            double dose = Math.Round(Math.Min(largestDose, wanted / (PotsCatch * CropPlan.PotAreaM2 * potsPerM2)), 1);
            int minutes = (int)Math.Round(4 * dose);
            yield return new WateringEvent(start, minutes, "overheadBoom", dose, "A", late ? "after dispatch" : "");
            yield return new WateringEvent(start + minutes + 3, minutes, "overheadBoom", dose, "B", late ? "after dispatch" : "");
        }
        else if (!weekend && hose < 0.12)
        {
            yield return new WateringEvent(midnightMinute + (int)(600 + (hour * 300)), 20, "hose", 0.4, hose < 0.06 ? "A" : "B", "dry corners by hand");
        }
    }
}
