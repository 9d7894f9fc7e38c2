using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Learned;

/// <summary>How far a sensor was from what it was predicted to read on days that its prediction had not learned from, and what is more than usual.</summary>
/// <param name="Middle">Median of logged less predicted. [SI unit of the channel]</param>
/// <param name="Of95">95 of 100 were no further from the middle. [SI unit of the channel]</param>
/// <param name="StepLimit">A single step further from the middle is out of line. [SI unit of the channel]</param>
/// <param name="Parts">Medians of days, less the middle, by <see cref="DayPart"/>.</param>
internal sealed record UsualError(double Middle, double Of95, double StepLimit, DayError[] Parts)
{
    /// <summary>Share of the held-out errors that <see cref="StepLimit"/> starts from. [1]</summary>
    public const double StepShare = 0.999;

    /// <summary>How many times as far a step must lie. Set on simulated weeks without a fault. [1]</summary>
    public const double StepTimes = 1.5;

    /// <summary>From held-out errors.</summary>
    /// <param name="table">The table that they belong to.</param>
    /// <param name="errors">Logged less predicted, NaN where not known. [SI unit of the channel]</param>
    /// <param name="accuracy">What the sensor may be off anyway: no limit lies below it; NaN: not known. [SI unit of the channel]</param>
    public static UsualError Of(SensorTable table, double[] errors, double accuracy)
    {
        double least = double.IsNaN(accuracy) ? 0 : accuracy;
        double[] known = Sorted(errors.Where(double.IsFinite));
        double middle = Quantiles.Of(known, 0.5);
        double[] centred = [.. errors.Select(e => e - middle)];
        double[] away = Sorted(known.Select(e => Math.Abs(e - middle)));
        return new UsualError(
            middle,
            Quantiles.Of(away, 0.95),
            Math.Max(least, StepTimes * Quantiles.Of(away, StepShare)),
            [.. Enum.GetValues<DayPart>().Select(part => DayError.Of(DayMedians.Of(table, centred, part).Values, least))]);
    }

    private static double[] Sorted(IEnumerable<double> values)
    {
        double[] sorted = [.. values];
        Array.Sort(sorted);
        return sorted;
    }
}
