using ClimateLens.Science.Statistics;
using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Pots;

/// <summary>How fast the pots of each bench dry in the air's drying power.</summary>
/// <param name="Rates">Levels lost a kPa h, by bench, drawn towards the mean of all benches where there is little of its own.</param>
/// <param name="Noise">Standard deviation of a stretch's fall about the line, mostly that of two grades. [levels]</param>
/// <param name="Stretches">Stretches fitted.</param>
/// <remarks>
/// <para><b>Formula:</b> <c>fall = r_bench · Σ VPD Δt</c> through the origin by least squares, one noise for all benches; the benches' rates shrunk by <see cref="ShrunkMeans"/>.
/// A forecast is <c>level - r D</c> with the variances of rate, drying power and noise added, between levels 1 and 5.</para>
/// <para><b>Source:</b> common practice (a pot's water use follows the air's drying power); the form is a choice of this project. <b>Range and error:</b> levels 1 to 4; free water
/// above 4 drains, and below 2 plants use less. Sun beyond what the deficit shows, plant size and grader are left to the noise; so it is scored on held-out days before it is shown.</para>
/// </remarks>
public sealed record DryingRates(ShrunkMeans Rates, double Noise, int Stretches)
{
    /// <summary>Fewer stretches carry no rate. Choice of this project.</summary>
    public const int FewestStretches = 6;

    /// <summary>Fits the rates; null below <see cref="FewestStretches"/> or where no air was known to dry.</summary>
    /// <param name="stretches">Stretches without a watering; those with a NaN or without drying power are passed over.</param>
    /// <param name="benches">Number of benches, above every number used.</param>
    public static DryingRates? Fit(IEnumerable<DryingStretch> stretches, int benches)
    {
        DryingStretch[] known = [.. stretches.Where(s => double.IsFinite(s.PowerKPaH + s.Fall) && s.PowerKPaH > 0)];
        int measured = known.Select(s => s.Bench).Distinct().Count();
        if (known.Length < FewestStretches || known.Length <= measured)
        {
            return null;
        }

        double[] rates = new double[benches], powers = new double[benches];
        for (int bench = 0; bench < benches; bench++)
        {
            DryingStretch[] own = [.. known.Where(s => s.Bench == bench)];
            powers[bench] = own.Sum(s => s.PowerKPaH * s.PowerKPaH);
            rates[bench] = own.Length == 0 ? double.NaN : own.Sum(s => s.PowerKPaH * s.Fall) / powers[bench];
        }

        double squares = known.Sum(s => Square(s.Fall - (rates[s.Bench] * s.PowerKPaH)));
        double noise = Math.Sqrt(squares / (known.Length - measured));
        double least = Math.Max(noise, 0.05); // grades are never that alike: keeps a variance above 0
        return new(ShrunkMeans.Of(rates, [.. powers.Select(p => p > 0 ? least * least / p : double.NaN)]), least, known.Length);
    }

    /// <summary>The level after more drying, with its 5 to 95 % range. [levels]</summary>
    /// <param name="bench">Number of the bench.</param>
    /// <param name="level">Level now, 1 to 5.</param>
    /// <param name="powerKPaH">Drying power to come. [kPa h]</param>
    /// <param name="powerErrorKPaH">Standard error of that. [kPa h]</param>
    public Interval After(int bench, double level, double powerKPaH, double powerErrorKPaH)
    {
        (double rate, double variance) = Rates.Groups[bench];
        double start = Math.Min(Guard.Within(level, MoistureScale.Driest, MoistureScale.Wettest, "(level)"), MoistureScale.Container + 0.5); // free water drains
        double reach = Normal.InvCDF(0, 1, 0.95) * Math.Sqrt((Noise * Noise) + (variance * powerKPaH * powerKPaH) + Square(rate * powerErrorKPaH));
        double middle = start - (rate * powerKPaH);
        return new(On(middle), On(middle - reach), On(middle + reach));
    }

    private static double On(double level) => Math.Clamp(level, MoistureScale.Driest, MoistureScale.Wettest);

    private static double Square(double x) => x * x;
}
