using System.Collections.Immutable;
using ClimateLens.Analysis.Care;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Scouting;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Stages;

/// <summary>Last stage: what the stages found, put together as the immutable review. It works nothing out any more.</summary>
public static class ReviewAssembly
{
    /// <summary>Version of docs/review.schema.json that reviews follow.</summary>
    public const string SchemaVersion = "1.0";

    /// <summary>Assembles the review; what is null in it is named in its <see cref="Review.NotKnown"/>.</summary>
    public static Review Assemble(
        HousePeriod period, RiskState risk, ImmutableArray<Watering>? waterings, ImmutableArray<Finding> findings, SecondOpinionReport opinion, CauseState causes, OutlookReport? outlook, PotState pots, CareState care)
    {
        HouseInput input = period.Input;
        OpinionsOnWetness opinions = OpinionsOnWetness.Of(period, risk);
        Review review = new()
        {
            SchemaVersion = SchemaVersion,
            House = new ReviewedHouse(input.House.Id, input.House.Name, input.Nursery.Name, StandingCrop.Of(input)?.Species, input.Nursery.Invented),
            Period = PeriodOf(input),
            Coverage = CoverageOf.Period(period, risk.Hours),
            Hours = ReviewHours.Of(risk, opinions.ShareWet(), input.Nursery.Zone),
            RiskHours = risk.Total,
            RiskHoursBefore = risk.TotalBefore,
            WeekBefore = BeforeThis.Of(period, risk),
            ErrorShares = risk.Errors,
            LeafBasis = period.HasAir ? period.Foliage?.Basis : null,
            LeafScores = period.HasAir ? LeafScores.Of(period) : [],
            WetPeriods = period.HasAir ? WetSpells.Find(period, risk) : null,
            WetnessOpinions = period.HasAir ? opinions.Summary() : [],
            PublishedLimits = period.HasAir ? PublishedLimitsOf.Period(period, risk) : [],
            Canopy = period.Canopy,
            Waterings = waterings,
            WhatIfs = causes.WhatIfs,
            Causes = causes.Shares,
            WateringHints = causes.Hints,
            Floods = causes.Floods,
            Outlook = outlook,
            HouseBalance = causes.Balance,
            MatchedWaterings = causes.Waterings,
            Pots = pots.Pots,
            Roots = pots.Roots,
            Records = care.Records,
            Scouting = ScoutingOf.Of(period, risk),
            Sensors = SensorReports.Of(period),
            SecondOpinion = opinion.Sensors.IsEmpty ? null : opinion,
            Clocks = period.Clocks,
            Imports = ImportedFiles.Of(input),
            Findings = findings,
            NotKnown = [],
            Provenance = ProvenanceOf.Review(period),
        };
        return review with { NotKnown = UnknownParts.Of(review, period, opinion, causes) };
    }

    private static ReviewPeriod PeriodOf(HouseInput input)
    {
        DateTimeZone zone = input.Nursery.Zone;
        ZonedDateTime from = input.Period.Start.InZone(zone);
        IsoWeek week = IsoWeek.Of(from.Date);
        return new ReviewPeriod(
            from.ToOffsetDateTime(),
            input.Period.End.InZone(zone).ToOffsetDateTime(),
            week.In(zone) == input.Period ? week.ToString() : null,
            zone.Id);
    }
}
