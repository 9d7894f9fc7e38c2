namespace ClimateLens.Science.Leaf;

/// <summary>What the mean leaf of a crop sees.</summary>
/// <remarks>
/// <para>Leaves among leaves give each other as much heat radiation as they take: on the mean of a crop that cancels, and only what passes to
/// the cover over it and to bench and pots under it is left, as in the net radiation of a crop.</para>
/// <para><b>Formula:</b> share <c>(1 - exp(-k L))/L</c> of a leaf side, k = 0.94 for long-wave radiation (leaves are nearly black). <b>Source:</b> [DEZWART96], after
/// [STANGHELLINI87]; both from memory. <b>Range:</b> leaves spread at random. <b>Error:</b> of k 0.1; the uppermost leaves see the cover with their whole upper
/// side and are colder at night than the mean, the lowest see none of it.</para>
/// </remarks>
public static class MeanLeaf
{
    /// <summary>Extinction coefficient of long-wave radiation. [1]</summary>
    public const double LongWaveExtinction = 0.94;

    /// <summary>Share of a leaf side's view that no other leaf takes, above 0 to 0.94. [1]</summary>
    /// <param name="leafArea">Leaf area over ground area, 0 to 20. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">The leaf area is impossible.</exception>
    public static double OpenShare(double leafArea)
    {
        double leaves = Guard.Within(leafArea, 0, 20, "(leaf area index)");
        return leaves < 1e-6 ? LongWaveExtinction : (1 - Math.Exp(-LongWaveExtinction * leaves)) / leaves;
    }
}
