using ClimateLens.Science.Sun;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Sun on level ground under made-up clouds that change from hour to hour: light for tests of clocks.</summary>
public sealed record SyntheticSky(double LatitudeDeg = 53.2, double LongitudeDeg = -0.6, ulong Seed = 1)
{
    /// <summary>Global radiation at a true moment. [W/m²]</summary>
    public double Wm2(Instant at)
    {
        double elevation = SolarPosition.ElevationDeg(at.ToUnixTimeTicks() / 1e7, LatitudeDeg, LongitudeDeg);
        double hours = at.ToUnixTimeTicks() / 3.6e10, hour = Math.Floor(hours);
        double pass = Pass(hour) + ((hours - hour) * (Pass(hour + 1) - Pass(hour)));
        double twilight = elevation is > -4 and <= 2 ? 2 * (elevation + 4) / 6 : 0;
        return Math.Max(ClearSkyRadiation.GlobalWm2(elevation), twilight) * pass;
    }

    /// <summary>Share of the light that clouds let through, 0.2 to 1. [1]</summary>
    private double Pass(double hour)
    {
        ulong x = ((ulong)(long)hour + (Seed << 32)) * 0x9E3779B97F4A7C15;
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
        x ^= x >> 27;
        return 0.2 + (0.8 * (x >> 40) / (double)(1 << 24));
    }
}
