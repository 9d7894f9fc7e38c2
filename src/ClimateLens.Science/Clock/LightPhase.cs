using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Clock;

/// <summary>Where in the day the light lies, coarsely and wherever the clock stands: the direction of the mean light on a dial of 24 hours.</summary>
internal static class LightPhase
{
    /// <summary>
    /// Least length of the mean direction, 1 for light at one moment, 0 for light all day. A day of L hours has
    /// sin(πL/24)/(πL/24): 0.19 for 20 h, 0.08 for 22 h, beyond which there is no dark to find the day by. [1]
    /// </summary>
    private const double LeastResultant = 0.08;

    /// <summary>Share of the day's bright light from which on a reading counts in full. [1]</summary>
    private const double Level = 0.1;

    /// <summary>Middle of the light less solar noon, over all days together; null when it is as light by night as by day. [min]</summary>
    public static double? OffsetMin(LightCurve curve, SunNoons sun)
    {
        (double X, double Y, double Weight) sum = default;
        for (int from = 0; from < curve.Count;)
        {
            int day = sun.DayOf(curve.Minutes[from]);
            int to = from + 1;
            while (to < curve.Count && sun.DayOf(curve.Minutes[to]) == day)
            {
                to++;
            }

            Add(ref sum, curve, from, to, sun.NoonMin(day));
            from = to;
        }

        double length = Math.Sqrt((sum.X * sum.X) + (sum.Y * sum.Y));
        return sum.Weight > 0 && length > LeastResultant * sum.Weight
            ? Math.Atan2(sum.Y, sum.X) / (2 * Math.PI) * SunNoons.DayMin
            : null;
    }

    private static void Add(ref (double X, double Y, double Weight) sum, LightCurve curve, int from, int to, double noonMin)
    {
        double[] sorted = curve.Sorted(from, to);
        double floor = Quantiles.Of(sorted, 0.1), top = Quantiles.Of(sorted, 0.9);
        for (int i = from; i < to && top > floor && double.IsFinite(noonMin); i++)
        {
            double light = Math.Clamp((curve.Values[i] - floor) / (Level * (top - floor)), 0, 1);
            double angle = 2 * Math.PI * (curve.Minutes[i] - noonMin) / SunNoons.DayMin;
            sum = (sum.X + (light * Math.Cos(angle)), sum.Y + (light * Math.Sin(angle)), sum.Weight + light);
        }
    }
}
