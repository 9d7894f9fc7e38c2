using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>How often pots stood within the crop's band of levels, at dusk and before waterings.</summary>
/// <remarks>
/// <b>Rules:</b> wet late is a level at or above the band's upper end in the last round of the day; a bench was watered too wet half a level below that end or above it, too dry below the
/// lower end, by its last visit up to six hours before. Choices of this project on common practice without a published source.
/// </remarks>
internal static class PotBand
{
    private static readonly Duration Before = Duration.FromHours(6);
    private const double NearTop = 0.5;

    /// <summary>Shares of the checks; null without a level.</summary>
    public static PotBandReport? Of(PotData data)
    {
        PotRules rules = data.House.Input.House.Pots;
        PotCheck[] graded = [.. data.Own.Where(c => c.Moisture is not null)];
        if (graded.Length == 0)
        {
            return null;
        }

        LocalTime late = rules.Rounds.IsEmpty ? new LocalTime(13, 0) : rules.Rounds[^1].From;
        PotCheck[] atDusk = [.. graded.Where(c => c.At.InZone(data.Zone).TimeOfDay >= late)];
        return new(
            rules.BandLow,
            rules.BandHigh,
            graded.Length,
            graded.Count(c => c.Moisture < rules.BandLow),
            graded.Count(c => c.Moisture > rules.BandHigh),
            atDusk.Length,
            atDusk.Count(c => c.Moisture >= rules.BandHigh));
    }

    /// <summary>The level of each bench before each watering of the period, in time order.</summary>
    public static ImmutableArray<LevelBeforeWatering> BeforeWaterings(PotData data)
    {
        Interval period = data.House.Input.Period;
        var found =
            from bench in data.Visits.Keys
            from watering in data.Waterings.Of(bench, period.Start, period.End).Where(w => period.Contains(w.Start))
            let visit = data.Visits[bench].LastOrDefault(v => v.At <= watering.Start && v.At >= watering.Start - Before)
            where visit.Checks > 0 && !data.Waterings.Of(bench, visit.At, watering.Start).Any(w => w.Start < watering.Start)
            orderby watering.Start, bench
            select Judge(data, bench, watering, visit);
        return [.. found];
    }

    private static LevelBeforeWatering Judge(PotData data, string bench, WateringEvent watering, BenchVisit visit)
    {
        PotRules rules = data.House.Input.House.Pots;
        string verdict = visit.Level >= rules.BandHigh - NearTop ? "tooWet" : visit.Level < rules.BandLow ? "tooDry" : "inBand";
        return new(watering.Start.InZone(data.Zone).ToOffsetDateTime(), bench, visit.Level, (watering.Start - visit.At).TotalHours, verdict);
    }
}
