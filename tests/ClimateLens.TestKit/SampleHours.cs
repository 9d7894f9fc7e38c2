using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Hours of a made-up week.</summary>
internal static class SampleHours
{
    public static IEnumerable<OffsetDateTime> Starts(ReviewPeriod period, DateTimeZone zone)
    {
        for (Instant at = period.From.ToInstant(); at < period.To.ToInstant(); at += Duration.FromHours(1))
        {
            yield return at.InZone(zone).ToOffsetDateTime();
        }
    }

    public static ImmutableArray<ReviewHour> Of(ReviewPeriod period, DateTimeZone zone, int gapFrom, int gapHours)
        => [.. Starts(period, zone).Select((start, i) => i >= gapFrom && i < gapFrom + gapHours ? Unknown(start) : Known(start, i))];

    private static ReviewHour Unknown(OffsetDateTime start)
        => new(start, null, null, null, null, null, null, null, null, null, null, IsNight(start));

    private static ReviewHour Known(OffsetDateTime start, int index)
    {
        double day = Math.Sin((start.Hour - 9) * Math.PI / 12);
        double drift = Math.Sin(index / 31.0);
        double temperature = 17.5 + (4.5 * day) + drift;
        double humidity = Math.Min(99.2, 82 - (14 * day) + (6 * drift));
        double saturated = 0.61094 * Math.Exp(17.625 * temperature / (temperature + 243.04)); // Alduchov and Eskridge 1996; looks only
        double vapour = saturated * humidity / 100;
        double ln = Math.Log(vapour / 0.61094);
        double dewPoint = 243.04 * ln / (17.625 - ln);
        bool night = IsNight(start);
        double leaf = temperature - (night ? 1.0 : 0.2);
        double margin = leaf - dewPoint;
        double probability = Math.Round(1 / (1 + Math.Exp((margin - 1.2) * 4)), 2);
        return new ReviewHour(
            start, temperature, humidity, saturated - vapour, dewPoint, leaf, margin, 2165 * vapour / (temperature + 273.15), margin <= 0, probability > 0.5, probability, night);
    }

    private static bool IsNight(OffsetDateTime start) => start.Hour is < 7 or >= 18;
}
