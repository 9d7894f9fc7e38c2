using System.Globalization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>A value as a bar with its range as a line; the numbers stand beside it, so that it needs no words.</summary>
internal static class RangeBar
{
    private const double Width = 140;

    /// <summary>The picture.</summary>
    /// <param name="estimate">The value and its range; what lies below 0 is cut.</param>
    /// <param name="full">What fills it, above 0.</param>
    public static Html Of(Estimate estimate, double full)
        => HtmlBuilder.Of($"<svg class=\"bar\" width=\"140\" height=\"14\" viewBox=\"0 0 140 14\" aria-hidden=\"true\"><rect x=\"0\" y=\"3\" height=\"8\" width=\"{At(estimate.Value, full)}\"></rect><line x1=\"{At(estimate.Low, full)}\" x2=\"{At(estimate.High, full)}\" y1=\"7\" y2=\"7\"></line></svg>");

    private static string At(double value, double full) => (Width * Math.Clamp(value / full, 0, 1)).ToString("0.#", CultureInfo.InvariantCulture);
}
