using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator;

/// <summary>What nobody logs of a house and its crop, and what differs from one to the next.</summary>
/// <param name="FilmKgM2">Water that stays on a leaf area. [kg/m² = mm]</param>
/// <param name="LeafAirFactor">Air speed at the leaves over that of the usual house. [1]</param>
/// <param name="CanopyExchangeFactor">Exchange of air between canopy and house over the usual one. [1]</param>
/// <param name="PoreFactor">Resistance of leaf pores over the usual one. [1]</param>
/// <param name="LeafAreaFactor">Leaf area over that of the usual crop of that width. [1]</param>
/// <param name="RoofTransmission">Share of the sun outside that comes in. [1]</param>
public sealed record HouseNature(
    double FilmKgM2, double LeafAirFactor, double CanopyExchangeFactor, double PoreFactor, double LeafAreaFactor, double RoofTransmission)
{
    /// <summary>The house of the sample logs.</summary>
    public static HouseNature Usual { get; } = new(0.12, 1, 1, 1, 1, 0.66);

    /// <summary>One of the houses that there may be.</summary>
    /// <param name="seed">Seed of the nursery.</param>
    /// <param name="house">House id.</param>
    /// <remarks>
    /// Each even on its logarithm, and none taken from what the product assumes: 0.1 to 0.2 mm stays on a leaf, or half of that on a waxy one (from memory); air moves at 0.05 to
    /// 0.3 m/s under glass without fans (from memory), a factor of two and a half about the usual; leaf pores differ twofold between crops, leaf area by a third (both from memory);
    /// single glass with its bars lets 0.55 to 0.75 through (common practice, no source). How the canopy breathes nobody measured in pot plants: a factor of two and a half, at whose lower end the canopy stays
    /// within the 5 K seen in rose and in 99 of 100 hours within its 25 points [WESTREENEN20] (test); the dampest hour is 28 points damper, with the fullest crop 33.
    /// </remarks>
    public static HouseNature Drawn(ulong seed, string house)
    {
        SeededRandom random = Seeds.Stream(seed, "nature " + house);
        double Between(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
        return new(Between(0.05, 0.2), Between(0.5, 2), Between(0.4, 2.5), Between(0.5, 2), Between(0.7, 1.4), Between(0.55, 0.75));
    }
}
