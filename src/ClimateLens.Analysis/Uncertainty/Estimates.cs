using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Uncertainty;

/// <summary>Estimates from draws.</summary>
public static class Estimates
{
    /// <summary>A value with the 5 % and 95 % quantiles of its draws, widened where needed to hold the value itself.</summary>
    /// <param name="value">The value shown.</param>
    /// <param name="draws">Its draws, in any order; sorted in place.</param>
    public static Estimate Of(double value, double[] draws)
    {
        Interval range = Interval.OfDraws(value, draws);
        return new Estimate(range.Value, range.Low, range.High);
    }

    /// <summary>As <see cref="Of"/> for a count: the ends are rounded outwards to whole numbers.</summary>
    /// <param name="value">The count shown.</param>
    /// <param name="draws">Its draws, in any order; sorted in place.</param>
    public static Estimate OfCount(int value, double[] draws)
    {
        Estimate exact = Of(value, draws);
        return new Estimate(value, Math.Floor(exact.Low), Math.Ceiling(exact.High));
    }
}
