using MathNet.Numerics.Distributions;

namespace ClimateLens.Science.Statistics;

/// <summary>Range of a share that was counted.</summary>
/// <remarks>
/// <para><b>Formula:</b> <c>(p + z²/2n ± z √(p(1 - p)/n + z²/4n²))/(1 + z²/n)</c>. <b>Source:</b> [WILSON27], from memory.</para>
/// <para><b>Range:</b> cases that do not hang together; the hours of one night do, so count them by <see cref="EffectiveCount"/> or draw whole days.</para>
/// </remarks>
public static class WilsonInterval
{
    /// <summary>Share and its range; not known where nothing was counted. [1]</summary>
    /// <param name="hits">Cases that count, 0 to <paramref name="cases"/>.</param>
    /// <param name="cases">Cases, 0 or more; need not be whole.</param>
    /// <param name="level">Confidence, 0.5 to 0.999. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is impossible.</exception>
    public static Interval Of(double hits, double cases, double level)
    {
        double n = Guard.Within(Guard.Finite(cases), 0, double.MaxValue, "cases");
        double p = Guard.Within(Guard.Finite(hits), 0, n, "cases") / n;
        if (n == 0)
        {
            return Interval.Unknown;
        }

        double z = Normal.InvCDF(0, 1, (1 + Guard.Within(Guard.Finite(level), 0.5, 0.999, "(share)")) / 2);
        double share = z * z / n;
        double reach = z * Math.Sqrt((p * (1 - p) / n) + (share / (4 * n)));
        return new(p, (p + (share / 2) - reach) / (1 + share), (p + (share / 2) + reach) / (1 + share));
    }
}
