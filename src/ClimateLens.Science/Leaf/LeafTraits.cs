namespace ClimateLens.Science.Leaf;

/// <summary>What a leaf is like, for its energy balance.</summary>
/// <param name="WidthM">Width of the leaf along the air's way, 0.001 to 0.5. [m]</param>
/// <param name="Emissivity">Long-wave emissivity of both sides, above 0 to 1. [1]</param>
/// <param name="NightResistanceSm">Resistance of one side to vapour in the dark, 100 to 1e6. [s/m]</param>
/// <remarks>
/// The dark resistance closes the stomata further than [STANGHELLINI87] does: [SEGINER90] measured 2000 to 5000 s/m on most foliage and
/// flowering plants, 500 to 2000 s/m on vegetables.
/// </remarks>
public readonly record struct LeafTraits(double WidthM, double Emissivity, double NightResistanceSm)
{
    /// <summary>A leaf 6 cm wide, emissivity 0.95, 3000 s/m in the dark.</summary>
    /// <remarks>Width: choice of this project for a bract or leaf of a pot plant. Emissivity: from memory, 0.94 to 0.98 is usual.</remarks>
    public static LeafTraits PotPlant { get; } = new(0.06, 0.95, 3000);

    internal LeafTraits Checked()
    {
        Guard.Within(Guard.Finite(WidthM), 0.001, 0.5, "m", nameof(WidthM));
        Guard.AboveUpTo(Guard.Finite(Emissivity), 0, 1, "(share)", nameof(Emissivity));
        Guard.Within(Guard.Finite(NightResistanceSm), 100, 1e6, "s/m", nameof(NightResistanceSm));
        return this;
    }
}
