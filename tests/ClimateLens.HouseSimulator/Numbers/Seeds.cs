using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator.Numbers;

/// <summary>One random stream per purpose, so that changing one (another watering plan) leaves the others as they were.</summary>
public static class Seeds
{
    /// <summary>The stream of that name under a seed: FNV-1a of the name, mixed with the seed.</summary>
    public static SeededRandom Stream(ulong seed, string purpose)
    {
        ulong hash = 14695981039346656037;
        foreach (char letter in purpose)
        {
            hash = (hash ^ letter) * 1099511628211;
        }

        return new SeededRandom(hash ^ (seed * 0x9E3779B97F4A7C15));
    }
}
