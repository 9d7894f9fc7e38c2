namespace ClimateLens.Science.Canopy;

/// <summary>Share of the ground that plants hide, seen from above, each plant taken for a disc.</summary>
/// <remarks>
/// <para><b>Formula:</b> the union of discs over the ground of one plant: a quarter of a cell is worked out exactly as the area that
/// any disc of the grid reaches. For a square grid this is <c>(π r² - 2 A(s))/s²</c>, for triangles <c>(π r² - 3 A(s))/(s² √3/2)</c>, for a
/// rectangle <c>(π r² - A(a) - A(b))/(a b)</c>, with the lens <c>A(s) = 2 r² acos(s/2r) - (s/2)√(4 r² - s²)</c>; without order
/// <c>1 - exp(-N π r²)</c>.</para>
/// <para><b>Source:</b> plane geometry; without order the coverage of Poisson discs [HALL88] (from memory). <b>Range:</b> any diameter. <b>Error:</b> none for discs
/// (1e-8); plants are no discs: two workers' widths of one plant differ by 1 to 2 cm (common practice, no source), which near closure is 0.03 to 0.06 of cover.</para>
/// </remarks>
public static class GroundCover
{
    /// <summary>Cover from which a canopy counts as closed. Choice of this project. [1]</summary>
    public const double Closed = 0.95;

    /// <summary>Ground cover, 0 to 1. [1]</summary>
    /// <param name="spacing">How plants stand.</param>
    /// <param name="diameterCm">Width of a plant, 0 to 1000. [cm]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static double Of(PlantSpacing spacing, double diameterCm)
    {
        PlantSpacing s = spacing.Checked();
        double radius = Guard.Within(diameterCm, 0, 1000, "cm") / 2;
        if (double.IsNaN(radius))
        {
            return double.NaN;
        }

        if (diameterCm >= FullCoverDiameterCm(s))
        {
            return 1;
        }

        double disc = Math.PI * radius * radius;
        double cover = s.Pattern switch
        {
            SpacingPattern.Square => (disc - (2 * Lens(radius, s.AcrossCm))) / s.GroundCm2,
            SpacingPattern.Triangular => (disc - (3 * Lens(radius, s.AcrossCm))) / s.GroundCm2,
            SpacingPattern.Rectangular => RectangleCover.Of(radius, s.AcrossCm, s.AlongCm),
            _ => 1 - Math.Exp(-disc / s.GroundCm2),
        };
        return Math.Clamp(cover, 0, 1);
    }

    /// <summary>Smallest width at which no ground is seen; infinite without order. [cm]</summary>
    /// <param name="spacing">How plants stand.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is impossible.</exception>
    public static double FullCoverDiameterCm(PlantSpacing spacing)
    {
        PlantSpacing s = spacing.Checked();
        return s.Pattern switch
        {
            SpacingPattern.Triangular => 2 * s.AcrossCm / Math.Sqrt(3),
            SpacingPattern.Random => double.PositiveInfinity,
            _ => Math.Sqrt((s.AcrossCm * s.AcrossCm) + (s.AlongCm * s.AlongCm)),
        };
    }

    /// <summary>Width at which a cover is reached. [cm]</summary>
    /// <param name="spacing">How plants stand.</param>
    /// <param name="cover">Cover, 0 to 0.9999. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    /// <remarks>By bisection, to 1e-9 cm.</remarks>
    public static double DiameterCm(PlantSpacing spacing, double cover)
    {
        double wanted = Guard.Within(cover, 0, 0.9999, "(share)");
        if (double.IsNaN(wanted))
        {
            return double.NaN;
        }

        double low = 0, high = Math.Min(FullCoverDiameterCm(spacing), 1000);
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = Of(spacing, middle) < wanted ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Area shared by two discs of one radius. [cm²]</summary>
    private static double Lens(double radius, double distance) => 2 * radius <= distance
        ? 0
        : (2 * radius * radius * Math.Acos(distance / (2 * radius)))
            - (distance / 2 * Math.Sqrt((4 * radius * radius) - (distance * distance)));
}
