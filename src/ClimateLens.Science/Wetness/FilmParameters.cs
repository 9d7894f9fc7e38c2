using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Wetness;

/// <summary>What decides how a film of water on foliage fills and empties.</summary>
/// <param name="Leaf">What the leaf is like.</param>
/// <param name="PressureKPa">Air pressure, 10 to 120. [kPa]</param>
/// <param name="CapacityMm">Water that a leaf area holds on both sides together before it drips, above 0 to 2. [mm = kg/m² leaf]</param>
/// <param name="FloorMm">A film thinner than this that is drying counts as dry, 0 to the capacity. [mm]</param>
/// <param name="LongestHold">Steps without data over which the film is kept as it was; after more it is not known. 0 or more.</param>
public readonly record struct FilmParameters(
    LeafTraits Leaf, double PressureKPa, double CapacityMm, double FloorMm, int LongestHold)
{
    /// <summary>A pot plant's leaf at sea level: 0.2 mm on both sides together, floor 0.001 mm, three steps held.</summary>
    /// <remarks>
    /// Capacity: 0.1 to 0.2 mm a side is usual, from memory; here 0.1 mm a side, the film of the drying-time table. Floor and steps held:
    /// choice of this project.
    /// </remarks>
    public static FilmParameters PotPlant { get; } = new(LeafTraits.PotPlant, LeafAir.StandardPressureKPa, 0.2, 0.001, 3);

    internal FilmParameters Checked()
    {
        Leaf.Checked();
        Guard.Within(Guard.Finite(PressureKPa), 10, 120, "kPa", nameof(PressureKPa));
        Guard.AboveUpTo(Guard.Finite(CapacityMm), 0, 2, "mm", nameof(CapacityMm));
        Guard.Within(Guard.Finite(FloorMm), 0, CapacityMm, "mm", nameof(FloorMm));
        Guard.Within(LongestHold, 0, int.MaxValue, "steps", nameof(LongestHold));
        return this;
    }
}
