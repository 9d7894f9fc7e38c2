using System.Collections.Immutable;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>How much each cause of error moves the risk hours of the period by itself.</summary>
/// <remarks>
/// <para><b>Method:</b> law of propagation of uncertainty, [GUM08] 5.1.2, with differences in place of derivatives: the hours are recomputed with one
/// cause one standard deviation up, then down, and all others at zero; half the difference is that cause's contribution and its square its part of the
/// variance. <b>Error:</b> counts are whole hours and the causes work together, so shares are good to about a tenth (tests hold their sum to the draws).</para>
/// </remarks>
internal static class ErrorShares
{
    private static readonly double Rectangular = 1 / Math.Sqrt(3); // standard deviation of a half-width of one

    /// <summary>Contributions in hours, greatest first; causes that move nothing are left out.</summary>
    public static ImmutableArray<ErrorShare> Of(HousePeriod period, HourTable hours, FoliageDraws foliage)
    {
        (string Cause, FoliageErrors Up, FoliageErrors Down)[] causes = [.. Causes(ErrorWidths.Of(period))];
        int[] counts = new int[2 * causes.Length];
        double[] none = new double[hours.Count];
        foliage.Run(counts.Length, (i, one) => one.Take(i % 2 == 0 ? causes[i / 2].Up : causes[i / 2].Down, 0, none), (i, one) => counts[i] = one.Risk.AsSpan(hours.FirstOfPeriod).Count(true));
        (string Cause, double Hours)[] moved = [.. causes.Select((c, i) => (c.Cause, Math.Abs(counts[2 * i] - counts[(2 * i) + 1]) / 2.0))];
        double variance = moved.Sum(m => m.Hours * m.Hours);
        return [.. moved.Where(m => m.Hours > 0).OrderByDescending(m => m.Hours).Select(m => new ErrorShare(m.Cause, m.Hours, Math.Round(m.Hours * m.Hours / variance, 3)))];
    }

    private static IEnumerable<(string Cause, FoliageErrors Up, FoliageErrors Down)> Causes(ErrorWidths widths)
    {
        yield return ("airTemperature", Temperature(widths, 1), Temperature(widths, -1));
        yield return ("relativeHumidity", Humidity(widths, 1), Humidity(widths, -1));
        yield return ("leafTemperature", Leaf(widths, 1), Leaf(widths, -1));
        yield return ("canopyTemperature", new() { CanopyTemperatureScore = 1 }, new() { CanopyTemperatureScore = -1 });
        yield return ("canopyHumidity", new() { CanopyHumidityScore = 1 }, new() { CanopyHumidityScore = -1 });
        yield return ("cover", new() { CoverQuantile = 0.5 + (Rectangular / 2) }, new() { CoverQuantile = 0.5 - (Rectangular / 2) });
        yield return ("airSpeed", new() { AirSpeedFactor = Math.Pow(ErrorWidths.AirSpeedFactor, Rectangular) }, new() { AirSpeedFactor = Math.Pow(ErrorWidths.AirSpeedFactor, -Rectangular) });
        yield return ("light", new() { LightFactor = 1 + (Rectangular * ErrorWidths.LightShare) }, new() { LightFactor = 1 - (Rectangular * ErrorWidths.LightShare) });
        yield return ("film", new() { FilmFactor = Math.Pow(ErrorWidths.FilmFactor, Rectangular) }, new() { FilmFactor = Math.Pow(ErrorWidths.FilmFactor, -Rectangular) });
    }

    // A canopy sensor is another instrument than the main one, but where it is used the main one is not.
    private static FoliageErrors Temperature(ErrorWidths widths, int sign)
        => new() { TemperatureK = sign * Rectangular * widths.TemperatureK, CanopySensorK = sign * Rectangular * widths.CanopySensorK };

    private static FoliageErrors Humidity(ErrorWidths widths, int sign)
        => new() { HumidityPct = sign * Rectangular * widths.HumidityPct, CanopySensorPct = sign * Rectangular * widths.CanopySensorPct };

    private static FoliageErrors Leaf(ErrorWidths widths, int sign) => new()
    {
        LeafOffsetK = sign * Rectangular * widths.LeafOffsetK,
        LeafSensorK = sign * Rectangular * widths.LeafSensorK,
        LeafBalanceK = sign * Rectangular * widths.LeafBalanceK,
    };
}
