using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>
/// Reviews made by hand for tests of pages. The numbers are drawn with simple curves to look like a week; they are not
/// results of the analysis, and nothing may be tested against them but how they are shown.
/// </summary>
public static class SampleReviews
{
    public static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    /// <summary>A wet week with a gap, late waterings, doubtful sensors and more findings than a first screen takes.</summary>
    public static Review Rich(string week = "2025-W42", string houseId = "1", string houseName = "House 1")
    {
        ReviewPeriod period = Week(week);
        ImmutableArray<ReviewHour> hours = SampleHours.Of(period, London, gapFrom: 60, gapHours: 5);
        return new Review
        {
            SchemaVersion = "1",
            House = new ReviewedHouse(houseId, houseName, "Gannet Row", "cyclamen", Invented: true),
            Period = period,
            Coverage = new Coverage(hours.Length, hours.Length - 5, [new Gap(hours[60].Start, hours[65].Start, 5, "noReadings")]),
            Hours = hours,
            RiskHours = new Estimate(hours.Count(h => h.Risk == true), 44, 71),
            RiskHoursBefore = new Estimate(28, 21, 35),
            ErrorShares = SampleLeaves.ErrorShares,
            LeafBasis = SampleLeaves.Basis,
            LeafScores = [new("night", 90, -0.4, -0.7, -0.1, 0.6), new("day", 2, 0.9, null, null, 1.1)],
            WetPeriods = SampleLeaves.WetPeriods(hours),
            WetnessOpinions = SampleLeaves.Opinions,
            PublishedLimits = SampleLeaves.Limits,
            Canopy = SampleParts.Canopy(At(period.From.ToInstant()).Date),
            Waterings = SampleWaterings.Of(period, London),
            Records = SamplePots.Records(period),
            Pots = SamplePots.Pots(period),
            Roots = SamplePots.Roots,
            Scouting = SampleParts.Scouting,
            Sensors = SampleParts.Sensors,
            SecondOpinion = SampleParts.SecondOpinion,
            Clocks = SampleParts.Clocks,
            Imports = SampleParts.Imports,
            Findings = SampleParts.Findings,
            Causes = SampleCauses.Shares(41),
            WhatIfs = SampleCauses.WhatIfs,
            HouseBalance = SampleCauses.Balance,
            MatchedWaterings = SampleCauses.Matched,
            WateringHints = SampleCauses.Hints,
            Floods = SampleCauses.Floods,
            Outlook = SampleCauses.Outlook,
            NotKnown = SampleParts.NotKnown,
            Provenance = SampleParts.Provenance($"{houseId}{week}"),
        };
    }

    /// <summary>A week of which nothing is known: no reading, no record, no finding.</summary>
    public static Review Empty(string week = "2025-W43", string houseId = "2", string houseName = "House 2")
    {
        ReviewPeriod period = Week(week);
        ImmutableArray<ReviewHour> hours = [.. SampleHours.Starts(period, London).Select(s => new ReviewHour(s, null, null, null, null, null, null, null, null, null, null, false))];
        return new Review
        {
            SchemaVersion = "1",
            House = new ReviewedHouse(houseId, houseName, "Gannet Row", null, Invented: false),
            Period = period,
            Coverage = new Coverage(hours.Length, 0, []),
            Hours = hours,
            RiskHours = null,
            Waterings = null,
            Sensors = [],
            Findings = [],
            NotKnown = [],
            Provenance = new Provenance("ClimateLens 0.1.0", 0, 0, "nursery.toml", new string('0', 64), new string('f', 64), "TZDB: 2025b", [], [], []),
        };
    }

    public static ReviewPeriod Week(string week)
    {
        if (!IsoWeek.TryParse(week, out IsoWeek parsed))
        {
            throw new ArgumentException($"{week} is no week.", nameof(week));
        }

        Interval span = parsed.In(London);
        return new ReviewPeriod(At(span.Start), At(span.End), week, London.Id);
    }

    public static OffsetDateTime At(Instant instant) => instant.InZone(London).ToOffsetDateTime();
}
