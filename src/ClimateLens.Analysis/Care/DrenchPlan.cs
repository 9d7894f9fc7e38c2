using System.Collections.Immutable;
using ClimateLens.Science.Irrigation;

namespace ClimateLens.Analysis.Care;

/// <summary>What somebody means to do: the sums of a drench, and of an emitter's time. It holds no product and picks no rate.</summary>
/// <param name="Pots">Number of pots, above 0.</param>
/// <param name="VolumeMl">Solution a pot, above 0. [mL]</param>
/// <param name="ConcentrationMgL">Active ingredient in the solution by the label, or null. [mg/L]</param>
/// <param name="OveragePct">What is mixed beyond the pots' need, 0 to 100. [%]</param>
/// <param name="FlowLh">Flow of an emitter, or null. [L/h]</param>
/// <param name="Cups">What catch cups or metered emitters gave in one time, all in one unit; empty where none were set out.</param>
/// <param name="Quarter">How many cups a quarter is.</param>
public sealed record DrenchPlan(int Pots, double VolumeMl, double? ConcentrationMgL, double OveragePct, double? FlowLh, ImmutableArray<double> Cups, QuarterRule Quarter)
{
    /// <summary>Works the sums out.</summary>
    public DrenchSums Sums()
    {
        double[] cups = [.. Cups];
        (double low, double high) = cups.Length > 0 ? CatchCups.DoseSpread(cups, Quarter) : (double.NaN, double.NaN);
        double? dose = ConcentrationMgL is { } c ? Dose.MilligramPerPot(VolumeMl, c) : null;
        return new(
            Dose.SolutionLitres(Pots, VolumeMl, OveragePct),
            dose,
            dose * Pots / 1000,
            FlowLh is { } flow ? Dose.EmitterMinutes(VolumeMl, flow) : null,
            cups.Length > 0 ? CatchCups.LowQuarterUniformityPct(cups, Quarter) : null,
            cups.Length > 0 ? CatchCups.ChristiansenPct(cups) : null,
            cups.Length > 1 ? CatchCups.EmissionUniformityPct(cups) : null,
            cups.Length > 0 ? low : null,
            cups.Length > 0 ? high : null);
    }
}
