using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Canopy;

/// <summary>Light taken up by layers of leaves.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>f = 1 - exp(-k L)</c>. <b>Source:</b> [MONSI53], from memory. <b>Range:</b> leaves spread at random; k 0.5 to 0.8
/// for broad-leaved pot plants, 0.7 here (from memory). <b>Error:</b> 10 % of f with k known to 0.1.</para>
/// </remarks>
public static class LightInterception
{
    /// <summary>Extinction coefficient taken where none is known, from memory. [1]</summary>
    public const double DefaultExtinction = 0.7;

    /// <summary>Share of the light that leaves take up. [1]</summary>
    /// <param name="extinction">Extinction coefficient k, above 0 to 2. [1]</param>
    /// <param name="leafArea">Leaf area over ground area, 0 to 20. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static double Share(double extinction, double leafArea) => 1 - Math.Exp(
        -Guard.AboveUpTo(extinction, 0, 2, "(k)") * Guard.Within(leafArea, 0, 20, "(leaf area index)"));

    /// <summary>Leaf area over ground area of a bench, from its cover. [1]</summary>
    /// <param name="cover">Ground cover, 0 to 1. [1]</param>
    /// <param name="withinPlants">Leaf area over the ground that plants hide, 0.1 to 20; 3 for a grown pot plant (from memory). [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> the product. <b>Error:</b> a third of the value, by that of <paramref name="withinPlants"/>.</remarks>
    public static double LeafArea(double cover, double withinPlants = 3) =>
        Guard.Within(cover, 0, 1, "(share)") * Guard.Within(withinPlants, 0.1, 20, "(leaf area index)");

    /// <summary>Short-wave radiation that a leaf area absorbs, as the mean over all leaves. [W/m²]</summary>
    /// <param name="global">Short-wave radiation over the crop, 0 to 1500. [W/m²]</param>
    /// <param name="extinction">Extinction coefficient k, above 0 to 2. [1]</param>
    /// <param name="leafArea">Leaf area over ground area, 0 to 20. [1]</param>
    /// <param name="absorptance">Share of the light that leaves intercept and do not send back, above 0 to 1; 0.75 from memory. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks><b>Formula:</b> <c>α S (1 - exp(-k L))/L</c>, at L = 0 <c>α S k</c>.</remarks>
    public static WattPerSquareMetre AbsorbedByLeaf(
        WattPerSquareMetre global, double extinction, double leafArea, double absorptance = 0.75)
    {
        double light = Guard.Within(global.Value, 0, 1500, "W/m²", nameof(global));
        double share = Share(extinction, leafArea);
        double absorbed = Guard.AboveUpTo(absorptance, 0, 1, "(share)");
        return new(absorbed * light * (leafArea == 0 ? extinction : share / leafArea));
    }
}
