namespace ClimateLens.Science.Statistics;

/// <summary>A number and the range it may lie in.</summary>
/// <param name="Value">Best estimate; NaN for not known.</param>
/// <param name="Low">Lower end; NaN where the evidence carries no range.</param>
/// <param name="High">Upper end; NaN likewise.</param>
public readonly record struct Interval(double Value, double Low, double High)
{
    /// <summary>Not known.</summary>
    public static Interval Unknown { get; } = new(double.NaN, double.NaN, double.NaN);

    /// <summary>A value with the 5 and 95 % quantiles of its draws, widened where needed to hold the value itself.</summary>
    /// <param name="value">The value shown.</param>
    /// <param name="draws">Its draws without NaN, in any order; sorted in place. None gives no range.</param>
    public static Interval OfDraws(double value, Span<double> draws)
    {
        draws.Sort();
        return draws.IsEmpty
            ? new(value, double.NaN, double.NaN)
            : new(value, Math.Min(value, Quantiles.Of(draws, 0.05)), Math.Max(value, Quantiles.Of(draws, 0.95)));
    }

    /// <summary>The median of draws with their 5 and 95 % quantiles.</summary>
    /// <param name="draws">Draws without NaN, in any order; sorted in place. None gives nothing known.</param>
    public static Interval MedianOf(Span<double> draws)
    {
        draws.Sort();
        return draws.IsEmpty ? Unknown : new(Quantiles.Of(draws, 0.5), Quantiles.Of(draws, 0.05), Quantiles.Of(draws, 0.95));
    }
}
