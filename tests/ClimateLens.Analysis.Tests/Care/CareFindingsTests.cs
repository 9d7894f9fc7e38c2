using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Tests.Pots;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Treatments;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Care;

/// <summary>Each rule on records has a case that fires and a near miss that does not.</summary>
public sealed class CareFindingsTests
{
    private static readonly SyntheticHouse House = CheckedHouse.Dry;

    private static SyntheticHouse Treated(SyntheticHouse house, int day, string group, string purpose = "root rot", string what = "drench")
        => house.Record(RecordKind.Treatments, day, 9, ("what", what), ("purpose", purpose), ("group", group), ("activeIngredient", "x"));

    [Theory]
    [InlineData("28", "28", "root rot", true)]
    [InlineData("28", "4", "root rot", false)]
    [InlineData("28", "4 + 28", "root rot", true)]
    [InlineData("28", "28", "grey mould", false)]
    public void GroupAgain_SameGroupInARowForOnePurpose_IsFound(string before, string again, string purpose, bool found)
        => Assert.Equal(found, Treated(Treated(House, -20, before), 2, again, purpose).Finds("groupAgain") is not null);

    [Fact]
    public void GroupAgain_AnotherGroupBetween_IsNone()
        => Assert.Null(Treated(Treated(Treated(House, -20, "28"), -10, "4"), 2, "28").Finds("groupAgain"));

    [Fact]
    public void GroupAgain_BeforeThePeriod_IsOldNews()
        => Assert.Null(Treated(Treated(House, -20, "28"), -10, "28").Finds("groupAgain"));

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void GroupAgain_MoreUsesThanTheLimit_IsFound(int limit, bool found)
    {
        SyntheticHouse house = Treated(Treated(Treated(House, -20, "28"), -10, "4"), 2, "28").With(care: new CareRules { GroupUses = limit });
        Assert.Equal(found, house.Finds("groupAgain") is not null);
        GroupUse use = house.Review().Records!.Groups[0];
        Assert.Equal(("28", 2, 1, ResistanceRisk.Medium, false), (use.Group, use.Uses, use.LongestRun, use.Risk, use.RiskSeen));
    }

    [Fact]
    public void Groups_TwoBenchesOnOneDay_AreOneTreatment()
        => Assert.Equal(1, Treated(Treated(House, 2, "28"), 2, "28").Review().Records!.Groups[0].Uses);

    [Theory]
    [InlineData(3, 3, true)]
    [InlineData(3, 2, false)]
    [InlineData(0, 0, false)]
    public void FailedAndRepeated_CountNoLowerAndSameGroup_IsFound(int before, int after, bool found)
    {
        SyntheticHouse house = Treated(Treated(House, -10, "17", "grey mould", "spray"), 2, "17", "grey mould", "spray")
            .Record(RecordKind.Scouting, -11, 9, ("symptom", "Grey mould"), ("count", $"{before}"))
            .Record(RecordKind.Scouting, 1, 9, ("symptom", "grey mould"), ("count", $"{after}"));
        Assert.Equal(found, house.Finds("failedAndRepeated") is not null);
    }

    [Fact]
    public void FailedAndRepeated_OtherGroup_IsNone()
        => Assert.Null(Treated(Treated(House, -10, "17", "grey mould"), 2, "9", "grey mould")
            .Record(RecordKind.Scouting, -11, 9, ("symptom", "grey mould"), ("count", "3"))
            .Record(RecordKind.Scouting, 1, 9, ("symptom", "grey mould"), ("count", "5")).Finds("failedAndRepeated"));

    [Theory]
    [InlineData("mg/L", 6.0)]
    [InlineData("ppm", 6.0)]
    [InlineData("mL/100 L", null)]
    public void Doses_VolumeTimesConcentration_IsMilligramsAPot(string unit, double? mg)
    {
        TreatmentEntry entry = Assert.Single(House.Record(RecordKind.Treatments, 2, 9, ("what", "drench"), ("volumePerPot", "0.12"), ("rate", "50"), ("rateUnit", unit)).Review().Records!.Treatments);
        Assert.Equal(mg, entry.MilligramPerPot);
        Assert.Equal(120, entry.VolumeMl!.Value, 9);
    }

    [Theory]
    [InlineData(11, "A", true)]
    [InlineData(13, "A", false)]
    [InlineData(11, "B", false)]
    [InlineData(11, "", true)]
    public void InsideReentry_CheckBeforeItsEndOnItsBench_IsFound(int hour, string bench, bool found)
    {
        SyntheticHouse house = House
            .Record(RecordKind.Treatments, 2, 9, ("what", "spray"), ("bench", "A"), ("reentryUntil", "2025-10-15T12:00:00Z")) // 13:00 in London
            .Check(2, hour, 0, bench, "1", 3);
        Assert.Equal(found, house.Finds("insideReentry") is not null);
    }

    [Fact]
    public void InsideReentry_Watering_IsFoundFirst()
    {
        SyntheticHouse house = House.Record(RecordKind.Treatments, 2, 9, ("what", "spray"), ("reentryUntil", "2025-10-15T12:00:00Z")).Water(2, 10, "B");
        Assert.Equal("insideReentry", house.Review().Findings[0].Id);
        Assert.Null(House.Record(RecordKind.Treatments, 2, 9, ("what", "spray")).Water(2, 10, "B").Finds("insideReentry"));
    }

    [Theory]
    [InlineData("growth regulation", "x", -80, "tomato", true, true)]
    [InlineData("", "Paclobutrazol", -80, "tomato", true, true)]
    [InlineData("grey mould", "x", -80, "tomato", false, false)]
    [InlineData("growth regulation", "x", -80, "cyclamen", true, false)]
    [InlineData("growth regulation", "x", -60, "tomato", false, false)]
    [InlineData("growth regulation", "x", -200, "tomato", false, false)]
    public void FloorRemembers_RegulatorBeforeTheCrop_IsFoundAndStopsForASensitiveOne(string purpose, string active, int day, string crop, bool found, bool stop)
    {
        // The crop is potted on 4 August, ten weeks before the period.
        SyntheticHouse house = House
            .WithHouse(House.Input.House with { Crops = [House.Input.House.Crops[0] with { Species = crop }], Care = new CareRules { SensitiveCrops = ["tomato"] } })
            .Record(RecordKind.Treatments, day, 9, ("what", "spray"), ("purpose", purpose), ("activeIngredient", active))
            .Water(2, 10, "", "floodFloor");
        Finding? finding = house.Finds("floorRemembers");
        Assert.Equal(found, finding is not null);
        Assert.Equal(stop, finding?.Text.StartsWith("Stop and look", StringComparison.Ordinal) ?? false);
        Assert.Equal(found ? 1 : 0, house.Review().Records!.Floors.Where(f => f.NextCrop is not null).Sum(f => f.Floods));
    }

    [Fact]
    public void FloorRemembers_Drench_DoesNotReachTheFloor()
        => Assert.Empty(House.Record(RecordKind.Treatments, -80, 9, ("what", "drench"), ("purpose", "growth regulation")).Review().Records!.Floors);

    [Theory]
    [InlineData("0.9", "mg/L", 10, true)]
    [InlineData("1", "mg/L", 10, false)]
    [InlineData("1", "%", 10, true)]
    [InlineData("1.5", "mg/L", 33, true)]
    [InlineData("1.5", "mg/L", 32, false)]
    public void TankOutOfLimits_ReadingOutOrTooOldOrInAnotherUnit_IsFound(string reading, string unit, int hour, bool found)
    {
        SyntheticHouse house = House.With(care: new CareRules { Tanks = [new("free chlorine", "", 1, 2, "mg/L")] })
            .Record(RecordKind.Tanks, 1, 8, ("what", "Free chlorine"), ("tank", "flood tank"), ("reading", reading), ("readingUnit", unit))
            .Water(1 + (hour / 24), hour % 24, "B", "ebbAndFlow");
        Assert.Equal(found, house.Finds("tankOutOfLimits") is not null);
    }

    [Fact]
    public void TankOutOfLimits_WithoutLimits_IsNone()
        => Assert.Null(House.Record(RecordKind.Tanks, 1, 8, ("what", "pH"), ("reading", "9")).Water(1, 10, "B").Finds("tankOutOfLimits"));

    [Theory]
    [InlineData(30.1, true)]
    [InlineData(31.0, false)]
    public void GrowthStopped_AQuarterOfTheRate_IsAsked(double lastCm, bool found)
    {
        SyntheticHouse house = House;
        double[] widths = [24, 27, 30, lastCm]; // 3 cm a week, then little
        for (int week = 0; week < widths.Length; week++)
        {
            for (int plant = 0; plant < 5; plant++)
            {
                house = house.Record(RecordKind.PlantWidths, (7 * week) - 20, 9, ("plant", $"{plant}"), ("width", FormattableString.Invariant($"{(10 * widths[week]) + plant - 2}")));
            }
        }

        Finding? finding = house.Check(0, 8, 0, "A", "1", 1).Finds("growthStopped");
        Assert.Equal(found, finding is not null);
        Assert.Equal(found, finding?.Evidence.Any(e => e.Contains("went dry", StringComparison.Ordinal)) ?? false);
    }

    [Fact]
    public void Kinds_LastRecordBeforeThePeriod_IsAGap()
    {
        RecordsReport records = Treated(House, -10, "28").Check(1, 8, 0, "A", "1", 3).Review().Records!;
        Assert.Equal((0, "none in this period; the last one 16 days before its end"), (records.Kinds["treatments"].Count, records.Kinds["treatments"].Note));
        Assert.Equal((1, ""), (records.Kinds["potChecks"].Count, records.Kinds["potChecks"].Note));
    }

    [Fact]
    public void Scouted_ByBench_IsListed()
    {
        // The season begins with the crop's potting, ten weeks before the period.
        ImmutableArray<ScoutedBench> scouted = House.Record(RecordKind.Scouting, 1, 9, ("symptom", "Rot"), ("bench", "B"), ("count", "3"))
            .Record(RecordKind.Scouting, -60, 9, ("symptom", "rot"), ("bench", "A"), ("count", "1")).Record(RecordKind.Scouting, -80, 9, ("symptom", "rot"), ("bench", "A"), ("count", "7")).Review().Records!.Scouted;
        Assert.Equal([("A", "rot", 1.0), ("B", "rot", 3.0)], scouted.Select(s => (s.Bench, s.Symptom, s.Plants)));
    }

    [Fact]
    public void Findings_OfRecords_NameNoRateAndRecommendNothing()
    {
        Finding finding = Treated(Treated(House, -20, "28"), 2, "28").Finds("groupAgain")!;
        Assert.Contains("recommends nothing", finding.Action, StringComparison.Ordinal);
        Assert.Contains("label", finding.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Season_CropPottedInAugust_LeavesOutWhatCameBefore()
        => Assert.Equal(new LocalDate(2025, 8, 4), Treated(House, 2, "28").Review().Records!.SeasonFrom);
}
