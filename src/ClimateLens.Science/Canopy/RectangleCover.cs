namespace ClimateLens.Science.Canopy;

/// <summary>Cover of discs on a rectangular grid, exact also where a disc reaches past its neighbour.</summary>
/// <remarks>
/// In one cell four quarter discs meet at the corners. Along the line x from a corner column, the two columns reach heights
/// <c>√(r² - x²)</c> and <c>√(r² - (a - x)²)</c> from below and from above; the larger counts, and beyond half the cell's height they
/// meet. The integral of a circle's height is known in closed form.
/// </remarks>
internal static class RectangleCover
{
    public static double Of(double radius, double across, double along)
    {
        // Half of the cell across (symmetry), where the near column always reaches higher; height capped at half the cell.
        double half = across / 2, cap = along / 2;
        double reach = Math.Min(half, radius);
        double full = radius > cap ? Math.Min(reach, Math.Sqrt((radius * radius) - (cap * cap))) : 0; // capped up to here
        double area = (full * cap) + UnderCircle(radius, reach) - UnderCircle(radius, full);
        return area / (half * cap);
    }

    /// <summary>Integral of <c>√(r² - x²)</c> from 0 to x.</summary>
    private static double UnderCircle(double radius, double x) => radius == 0
        ? 0
        : ((x * Math.Sqrt(Math.Max(0, (radius * radius) - (x * x)))) + (radius * radius * Math.Asin(Math.Min(1, x / radius)))) / 2;
}
