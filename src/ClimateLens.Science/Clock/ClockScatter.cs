using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Clock;

/// <summary>How far the days of a clock scatter.</summary>
internal static class ClockScatter
{
    /// <summary>For a normal distribution the standard deviation is this many times the median of the absolute deviations. [1]</summary>
    public const double NormalMad = 1.4826;

    /// <summary>
    /// Standard deviation of one day, from the median of the differences between neighbours, which neither a step nor a drift moves;
    /// infinite for fewer than two days. [min]
    /// </summary>
    public static double DayToDayMin(ReadOnlySpan<ClockDay> days)
    {
        if (days.Length < 2)
        {
            return double.PositiveInfinity;
        }

        double[] differences = new double[days.Length - 1];
        for (int i = 0; i < differences.Length; i++)
        {
            differences[i] = Math.Abs(days[i + 1].OffsetMin - days[i].OffsetMin);
        }

        Array.Sort(differences);
        return NormalMad * Quantiles.Of(differences, 0.5) / Math.Sqrt(2);
    }

    /// <summary>Median of the offsets of some days; NaN for none. [min]</summary>
    public static double MedianMin(ReadOnlySpan<ClockDay> days)
    {
        double[] offsets = new double[days.Length];
        for (int i = 0; i < offsets.Length; i++)
        {
            offsets[i] = days[i].OffsetMin;
        }

        Array.Sort(offsets);
        return Quantiles.Of(offsets, 0.5);
    }

    /// <summary>Sum of the distances of some days from a value. [min]</summary>
    public static double MisfitMin(ReadOnlySpan<ClockDay> days, double offsetMin)
    {
        double sum = 0;
        foreach (ClockDay day in days)
        {
            sum += Math.Abs(day.OffsetMin - offsetMin);
        }

        return sum;
    }
}
