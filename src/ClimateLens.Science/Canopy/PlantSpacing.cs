namespace ClimateLens.Science.Canopy;

/// <summary>How plants stand and how far apart.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="AcrossCm">Distance from plant to plant, 1 to 500; for random standing the side of the square each has to itself. [cm]</param>
/// <param name="AlongCm">The second distance of a rectangle, 1 to 500; the first again for other patterns. [cm]</param>
public readonly record struct PlantSpacing(SpacingPattern Pattern, double AcrossCm, double AlongCm)
{
    private static readonly double TriangleHeight = Math.Sqrt(3) / 2;

    /// <summary>Plants on a square grid.</summary>
    /// <param name="spacingCm">Distance, 1 to 500. [cm]</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is impossible.</exception>
    public static PlantSpacing Square(double spacingCm) => new PlantSpacing(SpacingPattern.Square, spacingCm, spacingCm).Checked();

    /// <summary>Plants on a grid of equal triangles.</summary>
    /// <param name="spacingCm">Distance, 1 to 500. [cm]</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is impossible.</exception>
    public static PlantSpacing Triangular(double spacingCm) =>
        new PlantSpacing(SpacingPattern.Triangular, spacingCm, spacingCm).Checked();

    /// <summary>Plants on a rectangular grid.</summary>
    /// <param name="acrossCm">One distance, 1 to 500. [cm]</param>
    /// <param name="alongCm">The other distance, 1 to 500. [cm]</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is impossible.</exception>
    public static PlantSpacing Rectangular(double acrossCm, double alongCm) =>
        new PlantSpacing(SpacingPattern.Rectangular, acrossCm, alongCm).Checked();

    /// <summary>Plants without order.</summary>
    /// <param name="plantsPerM2">Plants on a square metre, 0.04 to 10000. [1/m²]</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is impossible.</exception>
    public static PlantSpacing Random(double plantsPerM2)
    {
        double side = 100 / Math.Sqrt(Guard.Within(Guard.Finite(plantsPerM2), 0.04, 10000, "1/m²"));
        return new(SpacingPattern.Random, side, side);
    }

    /// <summary>Ground that one plant has. [cm²]</summary>
    public double GroundCm2 => Pattern switch
    {
        SpacingPattern.Triangular => TriangleHeight * AcrossCm * AcrossCm,
        SpacingPattern.Rectangular => AcrossCm * AlongCm,
        _ => AcrossCm * AcrossCm,
    };

    /// <summary>Plants on a square metre. [1/m²]</summary>
    public double PlantsPerM2 => 10_000 / GroundCm2;

    internal PlantSpacing Checked()
    {
        Guard.Within(Guard.Finite(AcrossCm), 1, 500, "cm", nameof(AcrossCm));
        Guard.Within(Guard.Finite(AlongCm), 1, 500, "cm", nameof(AlongCm));
        return this;
    }
}
