using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Waterings of a made-up week: some late, one in time, one by drip, one of which little is known.</summary>
internal static class SampleWaterings
{
    public static ImmutableArray<Watering> Of(ReviewPeriod period, DateTimeZone zone) =>
    [
        Overhead(period, zone, day: 0, hour: 15, minute: 40, minutes: 35, line: 12),
        Overhead(period, zone, day: 1, hour: 9, minute: 10, minutes: 30, line: 13),
        Overhead(period, zone, day: 2, hour: 16, minute: 5, minutes: 30, line: 14),
        Drip(period, zone, day: 3),
        Overhead(period, zone, day: 4, hour: 16, minute: 20, minutes: 40, line: 15),
        Bare(period, zone, day: 5),
    ];

    private static Watering Overhead(ReviewPeriod period, DateTimeZone zone, int day, int hour, int minute, int minutes, int line)
    {
        OffsetDateTime start = Local(period, zone, day, hour, minute);
        OffsetDateTime end = start + Duration.FromMinutes(minutes);
        OffsetDateTime cutOff = Local(period, zone, day, 14, 10);
        return new Watering(
            start, end, WateringMethod.OverheadBoom, true, "north bench", 210, Local(period, zone, day, 18, 10), cutOff,
            end.ToInstant() > cutOff.ToInstant(), 10.4, 12.1, new Estimate(1.7, 1.3, 2.1), 74, 88, null, $"waterings.csv:{line}");
    }

    private static Watering Drip(ReviewPeriod period, DateTimeZone zone, int day)
    {
        OffsetDateTime start = Local(period, zone, day, 10, 0);
        return new Watering(
            start, start + Duration.FromMinutes(12), WateringMethod.Drip, false, "", 216, Local(period, zone, day, 18, 4), null,
            null, 9.8, 9.9, new Estimate(0.1, -0.3, 0.5), 71, 70, null, "valve column \"Drip 1\"");
    }

    private static Watering Bare(ReviewPeriod period, DateTimeZone zone, int day)
        => new(Local(period, zone, day, 11, 30), null, null, null, "", null, null, null, null, null, null, null, null, null, null, "waterings.csv:16");

    private static OffsetDateTime Local(ReviewPeriod period, DateTimeZone zone, int day, int hour, int minute)
        => zone.AtStrictly(period.From.Date.PlusDays(day).At(new LocalTime(hour, minute))).ToOffsetDateTime();
}
