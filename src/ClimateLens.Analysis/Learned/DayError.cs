using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Learned;

/// <summary>The medians of held-out errors by day, and what is more than usual for a day.</summary>
/// <param name="Middle">Median of the days. [SI unit of the channel]</param>
/// <param name="Low">5 of 100 days lay lower. [SI unit of the channel]</param>
/// <param name="High">5 of 100 days lay higher. [SI unit of the channel]</param>
/// <param name="Limit">A day further from the middle is out of line. [SI unit of the channel]</param>
internal sealed record DayError(double Middle, double Low, double High, double Limit)
{
    /// <summary>How many robust standard deviations away a day must lie. Set on simulated weeks without a fault. [1]</summary>
    public const double Times = 4;

    /// <summary>A normal distribution's standard deviation is this many times its median absolute deviation ([HAMPEL74], from memory). [1]</summary>
    private const double Normal = 1.4826;

    /// <summary>From the medians of days.</summary>
    /// <param name="medians">A median a day. [SI unit of the channel]</param>
    /// <param name="least">The limit is no smaller. [SI unit of the channel]</param>
    public static DayError Of(IEnumerable<double> medians, double least)
    {
        double[] days = [.. medians.Order()];
        double middle = Quantiles.Of(days, 0.5);
        double[] away = [.. days.Select(d => Math.Abs(d - middle)).Order()];
        return new DayError(middle, Quantiles.Of(days, 0.05), Quantiles.Of(days, 0.95), Math.Max(least, Times * Normal * Quantiles.Of(away, 0.5)));
    }
}
