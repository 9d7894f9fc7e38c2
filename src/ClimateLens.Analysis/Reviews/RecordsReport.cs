using System.Collections.Immutable;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Treatments;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>The records that protect a crop: what was kept, and what it says.</summary>
/// <param name="Kinds">Records by kind (camelCase).</param>
/// <param name="Treatments">Treatments of the period.</param>
/// <param name="SeasonFrom">Start of the season in which groups are counted.</param>
/// <param name="Groups">Resistance groups used in the season, most uses first.</param>
/// <param name="Floors">Growth regulators on floors and benches, latest first.</param>
/// <param name="Tanks">Tanks against the limits of the nursery file; empty without limits.</param>
/// <param name="Reentry">What was logged inside a re-entry time.</param>
/// <param name="Stalls">Plants that all but stopped growing.</param>
/// <param name="Scouted">Affected plants of the season by bench.</param>
public sealed record RecordsReport(
    ImmutableSortedDictionary<string, RecordCount> Kinds,
    ImmutableArray<TreatmentEntry> Treatments,
    LocalDate SeasonFrom,
    ImmutableArray<GroupUse> Groups,
    ImmutableArray<FloorEntry> Floors,
    ImmutableArray<TankEntry> Tanks,
    ImmutableArray<ReentryEntry> Reentry,
    ImmutableArray<GrowthStall> Stalls,
    ImmutableArray<ScoutedBench> Scouted);

/// <summary>A treatment of the period.</summary>
/// <param name="At">When.</param>
/// <param name="Bench">Bench; empty for the whole house.</param>
/// <param name="What">Drench, spray …</param>
/// <param name="Purpose">Against or for what.</param>
/// <param name="ActiveIngredient">Active ingredient.</param>
/// <param name="Groups">Its resistance groups.</param>
/// <param name="VolumeMl">Volume a pot, or null. [mL]</param>
/// <param name="MilligramPerPot">Active ingredient a pot: volume by concentration; null where one of them is not noted. [mg]</param>
/// <param name="ReentryUntil">End of its re-entry time, or null.</param>
public sealed record TreatmentEntry(
    OffsetDateTime At,
    string Bench,
    string What,
    string Purpose,
    string ActiveIngredient,
    ImmutableArray<string> Groups,
    double? VolumeMl,
    double? MilligramPerPot,
    OffsetDateTime? ReentryUntil);

/// <summary>A resistance group in the season.</summary>
/// <param name="Group">Its code.</param>
/// <param name="Name">What the group is called; empty where it is not in the list.</param>
/// <param name="Uses">Treatments with it.</param>
/// <param name="LongestRun">Most treatments in a row with it, against one purpose.</param>
/// <param name="Last">When it was last used.</param>
/// <param name="Risk">Risk of resistance.</param>
/// <param name="RiskSeen">Whether that was seen in a source; else it is from memory.</param>
public sealed record GroupUse(string Group, string Name, int Uses, int LongestRun, OffsetDateTime Last, ResistanceRisk Risk, bool RiskSeen);

/// <summary>A growth regulator on a floor or bench.</summary>
/// <param name="At">When.</param>
/// <param name="Bench">Bench; empty for the whole house.</param>
/// <param name="What">Active ingredient, or as it was noted.</param>
/// <param name="DaysAgo">Days before the end of the period. [d]</param>
/// <param name="NextCrop">A crop that was set there since and stands in the period, or null.</param>
/// <param name="Sensitive">Whether the nursery file names that crop as sensitive.</param>
/// <param name="Floods">Floods over it in the period.</param>
public sealed record FloorEntry(OffsetDateTime At, string Bench, string What, int DaysAgo, string? NextCrop, bool Sensitive, int Floods);

/// <summary>A limit of a tank.</summary>
/// <param name="What">What is read.</param>
/// <param name="Tank">Tank; empty for every one.</param>
/// <param name="Low">Lowest, or null.</param>
/// <param name="High">Highest, or null.</param>
/// <param name="Unit">Unit; empty where it is not compared.</param>
/// <param name="Readings">Readings of the period.</param>
/// <param name="Outside">Those out of the limits.</param>
/// <param name="Waterings">Waterings while out of limits or without a reading.</param>
public sealed record TankEntry(string What, string Tank, double? Low, double? High, string Unit, int Readings, int Outside, ImmutableArray<TankWatering> Waterings);

/// <summary>A watering while a tank was out of its limits, or had no reading that still stood.</summary>
public sealed record TankWatering(OffsetDateTime Start, string Bench, WateringMethod? Method, double? Reading);

/// <summary>Something logged inside a re-entry time.</summary>
/// <param name="At">When.</param>
/// <param name="What"><c>potCheck</c> or <c>watering</c>.</param>
/// <param name="Bench">Bench.</param>
/// <param name="Who">Who signed; may be empty.</param>
/// <param name="Treated">When was treated.</param>
/// <param name="Until">End of the re-entry time.</param>
public sealed record ReentryEntry(OffsetDateTime At, string What, string Bench, string Who, OffsetDateTime Treated, OffsetDateTime Until);

/// <summary>Plants that all but stopped growing.</summary>
/// <param name="Measure"><c>width</c> or <c>height</c>.</param>
/// <param name="From">Day of the measurement before.</param>
/// <param name="To">Day of the last one.</param>
/// <param name="GrewCm">Growth between them. [cm]</param>
/// <param name="UsualCm">Growth in as many days at the rate of the two steps before. [cm]</param>
public sealed record GrowthStall(string Measure, LocalDate From, LocalDate To, double GrewCm, double UsualCm);

/// <summary>Affected plants on a bench.</summary>
public sealed record ScoutedBench(OffsetDateTime At, string Bench, string Symptom, double Plants);
