using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Clock;

/// <summary>How fast a clock gains or loses.</summary>
/// <param name="MinPerWeek">Gain; below 0 it loses. [min/week]</param>
/// <param name="ErrorMinPerWeek">Half-width of the range that holds it nineteen times in twenty, by the scatter of the days. [min/week]</param>
public readonly record struct ClockDrift(double MinPerWeek, double ErrorMinPerWeek)
{
    /// <summary>Fewest days that a slope is worked out of. [d]</summary>
    public const int FewestDays = 10;

    /// <summary>Most days that are taken, the latest. [d]</summary>
    private const int MostDays = 200;

    private const double SecondsPerWeek = 7 * 86400.0;

    /// <summary>The median of the slopes between all pairs of days; null for fewer than <see cref="FewestDays"/>.</summary>
    /// <param name="days">Days in time order, of one stretch.</param>
    /// <remarks>
    /// <para><b>Source:</b> Theil-Sen slope [SEN68]. <b>Error:</b> that of a least-squares line through days of the scatter about the line, widened by a quarter
    /// for the median, doubled.</para>
    /// </remarks>
    public static ClockDrift? Of(ReadOnlySpan<ClockDay> days)
    {
        days = days.Length > MostDays ? days[^MostDays..] : days;
        if (days.Length < FewestDays)
        {
            return null;
        }

        List<double> slopes = new(days.Length * days.Length / 2);
        for (int i = 0; i < days.Length; i++)
        {
            for (int j = i + 1; j < days.Length; j++)
            {
                slopes.Add((days[j].OffsetMin - days[i].OffsetMin) * SecondsPerWeek / (days[j].NoonUnixSeconds - days[i].NoonUnixSeconds));
            }
        }

        slopes.Sort();
        double slope = Quantiles.Of(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(slopes), 0.5);
        return new ClockDrift(slope, ErrorOf(days, slope));
    }

    private static double ErrorOf(ReadOnlySpan<ClockDay> days, double slope)
    {
        double middle = 0, spread = 0;
        double[] residuals = new double[days.Length];
        for (int i = 0; i < days.Length; i++)
        {
            middle += days[i].NoonUnixSeconds / SecondsPerWeek / days.Length;
        }

        for (int i = 0; i < days.Length; i++)
        {
            double week = (days[i].NoonUnixSeconds / SecondsPerWeek) - middle;
            spread += week * week;
            residuals[i] = days[i].OffsetMin - (slope * week);
        }

        Array.Sort(residuals);
        double median = Quantiles.Of(residuals, 0.5);
        double[] distances = [.. residuals.Select(r => Math.Abs(r - median)).Order()];
        return 2 * 1.25 * ClockScatter.NormalMad * Quantiles.Of(distances, 0.5) / Math.Sqrt(spread);
    }
}
