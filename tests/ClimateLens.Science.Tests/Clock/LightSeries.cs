using ClimateLens.Science.Clock;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Science.Tests.Clock;

/// <summary>A light sensor's readings by a clock that may be wrong.</summary>
internal sealed record LightSeries(long[] Utc, double[] Light, int StepMinutes)
{
    public static readonly Instant June = Instant.FromUtc(2025, 6, 2, 0, 0), December = Instant.FromUtc(2025, 12, 8, 0, 0);

    /// <summary>Readings of a light that is a function of the true moment, stamped by a clock that is so many minutes ahead of it.</summary>
    public static LightSeries Of(Func<Instant, double> light, Instant from, int days, int stepMinutes = 10, Func<Instant, double>? aheadMin = null)
    {
        List<(long, double)> rows = [];
        for (Instant at = from; at < from + Duration.FromDays(days); at += Duration.FromMinutes(stepMinutes))
        {
            double ahead = aheadMin?.Invoke(at) ?? 0;
            rows.Add(((at + Duration.FromSeconds(Math.Round(ahead * 60))).ToUnixTimeTicks() / 10, light(at)));
        }

        rows.Sort();
        return new LightSeries([.. rows.Select(r => r.Item1)], [.. rows.Select(r => r.Item2)], stepMinutes);
    }

    public static LightSeries Sky(Instant from, int days = 14, int stepMinutes = 10, Func<Instant, double>? aheadMin = null, ulong seed = 1)
        => Of(new SyntheticSky(Seed: seed).Wm2, from, days, stepMinutes, aheadMin);

    public LightSeries Without(Func<Instant, bool> lost)
        => this with { Light = [.. Light.Select((v, i) => lost(At(i)) ? double.NaN : v)] };

    public LightSeries Changed(Func<Instant, double, double> change) => this with { Light = [.. Light.Select((v, i) => change(At(i), v))] };

    public LightDays Days(double latitude = 53.2, double longitude = -0.6, double toMiddleSeconds = 0)
        => SunClock.Days(Utc, Light, StepMinutes * 60, toMiddleSeconds, latitude, longitude);

    private Instant At(int i) => Instant.FromUnixTimeTicks(Utc[i] * 10);
}
