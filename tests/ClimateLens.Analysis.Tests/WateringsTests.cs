using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class WateringsTests
{
    // Lincolnshire, 15 October 2025: sunset 18:05 BST (17:05 UTC), so the cut-off at four hours of drying is 14:05 BST.
    private static readonly LocalDate Wednesday = new(2025, 10, 15);
    private static readonly SyntheticHouse House = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);

    [Fact]
    public void Find_NoLogAndNoValve_IsNotKnown()
    {
        Review review = ReviewPipeline.Run(House.Input);
        Assert.Null(review.Waterings);
        Assert.Contains(review.NotKnown, u => u.What == "waterings");
    }

    [Fact]
    public void Find_LogWithoutRows_IsEmpty()
    {
        Review review = ReviewPipeline.Run(House.WithWateringLog().Input);
        Assert.Empty(review.Waterings!.Value);
        Assert.DoesNotContain(review.NotKnown, u => u.What.StartsWith("waterings", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(14, 0, false)]
    [InlineData(14, 10, true)]
    public void Find_EndEitherSideOfTheCutOff_IsLateOrNot(int hour, int minute, bool expected)
    {
        Watering watering = Single(House.WithWatering(Wednesday + new LocalTime(13, 0), ("end", $"2025-10-15T{hour:00}:{minute:00}:00"), ("method", "overheadBoom")));
        Assert.Equal(expected, watering.AfterCutOff);
        Assert.Equal(0, (watering.Sunset!.Value.ToInstant() - Instant.FromUtc(2025, 10, 15, 17, 5)).TotalMinutes, 3.0);
        Assert.Equal(watering.Sunset.Value.ToInstant() - Duration.FromHours(4), watering.CutOff!.Value.ToInstant());
    }

    [Theory]
    [InlineData("drip", WateringMethod.Drip)]
    [InlineData("Ebb and Flow", WateringMethod.EbbAndFlow)]
    [InlineData("flood floor", WateringMethod.FloodFloor)]
    public void Find_DryMethodInTheEvening_IsNeverLate(string text, WateringMethod expected)
    {
        Watering watering = Single(House.WithWatering(Wednesday + new LocalTime(19, 0), ("minutes", "10"), ("method", text)));
        Assert.Equal(expected, watering.Method);
        Assert.False(watering.WetsLeaves);
        Assert.Null(watering.CutOff);
        Assert.False(watering.AfterCutOff);
        Assert.NotNull(watering.Sunset);
    }

    [Fact]
    public void Find_UnknownMethod_IsKeptAndNamed()
    {
        Watering watering = Single(House.WithWatering(Wednesday + new LocalTime(19, 0), ("minutes", "10"), ("method", "bucket chain")));
        Assert.Null(watering.Method);
        Assert.Null(watering.WetsLeaves);
        Assert.Null(watering.AfterCutOff);
        Assert.Contains("bucket chain", watering.Source, StringComparison.Ordinal);
    }

    /// <summary>
    /// Dry air (18 °C, 60 %), no sun logged: a film of 0.2 mm on both sides evaporates in about 3 h in the dark (drying-time table computed with
    /// Penman's equation, 0.1 m/s; docs/science/wetness.md).
    /// </summary>
    [Theory]
    [InlineData(15, 13, 0, "boom", true)]
    [InlineData(15, 13, 0, "drip", false)]
    [InlineData(12, 22, 0, "boom", true)] // in the run-in, and reaches into the period
    [InlineData(12, 9, 0, "boom", false)]
    public void Wet_WateringOverLeaves_LastsUntilItHasEvaporated(int day, int hour, int minute, string method, bool expected)
    {
        static double Moving(Instant at, double size) => size * Math.Sin(at.ToUnixTimeSeconds() / 4000.0);
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(t => new Air(18 + Moving(t, 0.3), 60 + Moving(t, 1)))
            .WithRules(new RiskRules { CanopyDifference = false })
            .WithWatering(new LocalDateTime(2025, 10, day, hour, minute), ("minutes", "45"), ("method", method));
        Review review = ReviewPipeline.Run(house.Input);
        ReviewHour[] wet = [.. review.Hours.Where(h => h.Wet == true)];
        Assert.Equal(expected, wet.Length > 0);
        Assert.All(review.Hours, h => Assert.NotNull(h.Wet));
        if (day == 15 && expected)
        {
            Assert.Equal((15, 13), (wet[0].Start.Day, wet[0].Start.Hour));
            Assert.InRange(wet.Length, 2, 5);
            WetPeriod period = Assert.Single(review.WetPeriods!.Value);
            Assert.InRange(period.Hours, 2.5, 5);
        }
    }

    [Fact]
    public void Wet_NothingTellsOfWaterings_SaysSo()
    {
        Assert.Contains(ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input).NotKnown, u => u.What == "hours.wetFromWatering");
        Assert.DoesNotContain(ReviewPipeline.Run(House.WithWateringLog().Input).NotKnown, u => u.What == "hours.wetFromWatering");
    }

    [Fact]
    public void Find_UnknownMethods_AreNotKnownAndAFinding()
    {
        SyntheticHouse house = House
            .WithWatering(Wednesday + new LocalTime(8, 0), ("minutes", "10"), ("method", "bucket chain"))
            .WithWatering(Wednesday + new LocalTime(10, 0), ("minutes", "10"), ("method", "bucket chain"))
            .WithWatering(Wednesday + new LocalTime(12, 0), ("minutes", "10"))
            .WithWatering(Wednesday + new LocalTime(13, 0), ("minutes", "10"), ("method", "drip line"))
            .WithWatering(new LocalDateTime(2025, 10, 11, 8, 0), ("minutes", "10"), ("method", "last week's"));
        Review review = ReviewPipeline.Run(house.Input);
        Assert.StartsWith("The method of 3 of 4 waterings is not known (2 with words that are not known: \"bucket chain\"; 1 without a method)", review.NotKnown.Single(u => u.What == "waterings.method").Why, StringComparison.Ordinal);
        Finding finding = review.Findings.Single(f => f.Id == "wateringsNotJudged");
        Assert.Equal("3 of 4 waterings could not be judged: the log's method word \"bucket chain\" is not known; 1 has no method.", finding.Text);
        Assert.Contains("ebb & flow", finding.Action, StringComparison.Ordinal);
        Assert.Equal(3, finding.Evidence.Length);
    }

    [Fact]
    public void Find_KnownMethodsOnly_LeaveNoneUnjudged()
    {
        Review review = ReviewPipeline.Run(House.WithWatering(Wednesday + new LocalTime(8, 0), ("minutes", "10"), ("method", "Ebb & Flow")).Input);
        Assert.DoesNotContain(review.NotKnown, u => u.What == "waterings.method");
        Assert.DoesNotContain(review.Findings, f => f.Id == "wateringsNotJudged");
    }

    [Fact]
    public void Find_NeitherEndNorMinutes_IsLateOnlyWhenItBeganLate()
    {
        Watering early = Single(House.WithWatering(Wednesday + new LocalTime(9, 0), ("method", "hose")));
        Assert.Null(early.End);
        Assert.Null(early.AfterCutOff);
        Assert.Null(early.AbsoluteHumidityAfterGm3);
        Assert.Null(early.AbsoluteHumidityRiseGm3);
        Assert.NotNull(early.AbsoluteHumidityBeforeGm3);
        Assert.True(Single(House.WithWatering(Wednesday + new LocalTime(15, 0), ("method", "hose"))).AfterCutOff);
    }

    [Theory]
    [InlineData("2025-10-15T13:30:00Z")]
    [InlineData("2025-10-15T14:30:00+01:00")]
    [InlineData("2025-10-15T14:30:00")]
    [InlineData("14:30")]
    public void Find_EndInAnyForm_IsTheSameMoment(string end)
        => Assert.Equal(Instant.FromUtc(2025, 10, 15, 13, 30), Single(House.WithWatering(Wednesday + new LocalTime(14, 0), ("end", end))).End!.Value.ToInstant());

    [Fact]
    public void Find_EndAfterMidnightByClock_IsTheNextDay()
        => Assert.Equal(Instant.FromUtc(2025, 10, 15, 23, 20), Single(House.WithWatering(Wednesday + new LocalTime(23, 50), ("end", "00:20"))).End!.Value.ToInstant());

    [Fact]
    public void Find_EndBeforeStart_IsNotUsedAndSaid()
    {
        Watering watering = Single(House.WithWatering(Wednesday + new LocalTime(14, 0), ("end", "2025-10-15T12:00:00"), ("minutes", "15")));
        Assert.Equal(Instant.FromUtc(2025, 10, 15, 13, 15), watering.End!.Value.ToInstant());
        Assert.Contains("before its start", watering.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_StartOutsideThePeriod_IsNotThisPeriods()
    {
        SyntheticHouse house = House
            .WithWatering(new LocalDateTime(2025, 10, 12, 23, 59), ("minutes", "30"))
            .WithWatering(new LocalDateTime(2025, 10, 13, 0, 0), ("minutes", "30"))
            .WithWatering(new LocalDateTime(2025, 10, 19, 23, 59), ("minutes", "30"));
        Assert.Equal([0, 23], ReviewPipeline.Run(house.Input).Waterings!.Value.Select(w => w.Start.Hour));
    }

    [Fact]
    public void Find_HumidityStep_GivesTheRiseBetweenTheHours()
    {
        Instant at = (Wednesday + new LocalTime(10, 0)).InZoneStrictly(House.Input.Nursery.Zone).ToInstant();
        SyntheticHouse house = SyntheticHouse.Week("2025-W42")
            .WithAir(t => new Air(17.5 + (0.01 * Math.Sin(t.ToUnixTimeSeconds() / 4000.0)), (t < at ? 60 : 72) + (0.1 * Math.Sin(t.ToUnixTimeSeconds() / 4000.0))))
            .WithWatering(Wednesday + new LocalTime(10, 0), ("minutes", "20"), ("method", "boom"));
        Watering watering = Single(house);
        // 15 g/m³ saturate air of 17.5 °C (Nederhoff, HortResearch), so 12 points are 1.8 g/m³.
        Assert.Equal(1.8, watering.AbsoluteHumidityRiseGm3!.Value, 0.02);
        Assert.Equal(9.0, watering.AbsoluteHumidityBeforeGm3!.Value, 0.1);
        Assert.Equal(60, watering.RelativeHumidityBeforePct!.Value, 0.2);
        Assert.Equal(72, watering.RelativeHumidityAfterPct!.Value, 0.2);
        // One bias for both hours cancels: the range is far narrower than ±3 points of humidity (0.45 g/m³) either way.
        Assert.InRange(watering.AbsoluteHumidityRiseGm3.High - watering.AbsoluteHumidityRiseGm3.Low, 0.001, 0.2);
    }

    [Fact]
    public void Find_WateringsLessThanAnHourApart_ShareTheFiguresOfTheirRound()
    {
        SyntheticHouse House4(int secondStart) => House
            .WithWatering(Wednesday + new LocalTime(8, 0), ("minutes", "20"), ("method", "boom"), ("bench", "1"))
            .WithWatering(Wednesday + new LocalTime(9, secondStart), ("minutes", "20"), ("method", "boom"), ("bench", "2"));
        Watering alone = Single(House.WithWatering(Wednesday + new LocalTime(8, 0), ("minutes", "20"), ("method", "boom")));
        Watering other = Single(House.WithWatering(Wednesday + new LocalTime(9, 19), ("minutes", "20"), ("method", "boom")));
        Watering[] round = [.. ReviewPipeline.Run(House4(19).Input).Waterings!.Value];
        Assert.Equal(alone.AbsoluteHumidityBeforeGm3, round[0].AbsoluteHumidityBeforeGm3);
        Assert.Equal(other.AbsoluteHumidityAfterGm3, round[1].AbsoluteHumidityAfterGm3);
        Assert.Equal(round[0].AbsoluteHumidityRiseGm3, round[1].AbsoluteHumidityRiseGm3);
        Assert.Equal(round[0].RelativeHumidityAfterPct, round[1].RelativeHumidityAfterPct);
        Assert.NotEqual(alone.AbsoluteHumidityAfterGm3, round[0].AbsoluteHumidityAfterGm3);
        Watering[] apart = [.. ReviewPipeline.Run(House4(20).Input).Waterings!.Value];
        Assert.Equal(alone.AbsoluteHumidityRiseGm3, apart[0].AbsoluteHumidityRiseGm3);
        Assert.NotEqual(apart[0].AbsoluteHumidityBeforeGm3, apart[1].AbsoluteHumidityBeforeGm3);
    }

    [Fact]
    public void Find_AirMissingAround_GivesNoRise()
    {
        Instant at = (Wednesday + new LocalTime(10, 0)).InZoneStrictly(House.Input.Nursery.Zone).ToInstant();
        SyntheticHouse house = House.WithWatering(Wednesday + new LocalTime(10, 0), ("minutes", "20"), ("method", "boom"));
        Watering half = Single(house.WithoutRows(at - Duration.FromMinutes(30), at));
        Watering less = Single(house.WithoutRows(at - Duration.FromMinutes(35), at));
        Assert.NotNull(half.AbsoluteHumidityRiseGm3);
        Assert.Null(less.AbsoluteHumidityRiseGm3);
        Assert.NotNull(less.AbsoluteHumidityAfterGm3);
    }

    [Fact]
    public void Find_ValveRuns_AreMergedOverTenMinutesAndCountLitres()
    {
        // Open 08:00 to 08:10, 08:20 to 08:25 (10 min shut: same watering), 08:40 to 08:45 (15 min shut: the next one).
        SyntheticHouse house = Valve(House, [(8, 0), (8, 5), (8, 20), (8, 40)], new ColumnSettings(new FieldRef("V1", null), "valve", "", "1", 1) { Method = WateringMethod.Drip, LitresPerMinute = 18, Bench = "A" });
        Watering[] waterings = [.. ReviewPipeline.Run(house.Input).Waterings!.Value];
        Assert.Equal(2, waterings.Length);
        Assert.Equal(new LocalTime(8, 0), waterings[0].Start.TimeOfDay);
        Assert.Equal(new LocalTime(8, 25), waterings[0].End!.Value.TimeOfDay);
        Assert.Equal(15 * 18, waterings[0].Litres!.Value, 9);
        Assert.Equal(5 * 18, waterings[1].Litres!.Value, 9);
        Assert.Equal("A", waterings[0].Bench);
        Assert.Equal(WateringMethod.Drip, waterings[0].Method);
    }

    [Fact]
    public void Find_ValveWhoseStampsAreCutToMinutes_IsOpenForTheStepsThatWereMeant()
    {
        SyntheticHouse house = Valve(House, [(8, 0), (8, 5)], new ColumnSettings(new FieldRef("V1", null), "valve", "", "1", 1) { LitresPerMinute = 18 });
        ReadingBatch valves = house.Input.Batches[^1];
        ReadingBatch cut = valves with { UtcMicros = [.. valves.UtcMicros.Select((t, i) => t - (i % 3 == 1 ? 60_000_000 : 0))] };
        Watering watering = Single(house with { Input = house.Input with { Batches = house.Input.Batches.SetItem(house.Input.Batches.Length - 1, cut) } });
        Assert.Equal((new LocalTime(8, 0), new LocalTime(8, 10)), (watering.Start.TimeOfDay, watering.End!.Value.TimeOfDay));
        Assert.Equal(10 * 18, watering.Litres!.Value, 9);
    }

    [Fact]
    public void Find_OneFogLineInTwoExports_IsOneWateringWhereTheyOverlap()
    {
        SyntheticHouse house = House
            .WithColumn("old", "fogLine", t => IsAt(t, [(8, 0), (12, 0)]) ? 1 : 0)
            .WithColumn("new", "fogLine", t => IsAt(t, [(12, 0), (15, 0)]) ? 1 : 0);
        Assert.Equal([8, 12, 15], ReviewPipeline.Run(house.Input).Waterings!.Value.Select(w => w.Start.Hour));
    }

    [Fact]
    public void Find_ValveWithoutSettings_KnowsNeitherMethodNorLitres()
    {
        Watering watering = Single(Valve(House, [(8, 0)], null));
        Assert.Null(watering.Method);
        Assert.Null(watering.Litres);
    }

    [Fact]
    public void Find_FogLine_IsFog()
    {
        SyntheticHouse house = House.WithColumn("fog", "fogLine", t => IsAt(t, [(12, 0)]) ? 1 : 0);
        Watering watering = Single(house);
        Assert.Equal(WateringMethod.Fog, watering.Method);
        Assert.True(watering.WetsLeaves);
    }

    [Theory]
    [InlineData("drip", 1)]
    [InlineData("boom", 2)]
    public void Find_LogAndValveOfOneWatering_AreOneWhenTheMethodIsTheSame(string logged, int expected)
    {
        SyntheticHouse house = Valve(House, [(8, 0), (8, 5)], new ColumnSettings(new FieldRef("V1", null), "valve", "", "1", 1) { Method = WateringMethod.Drip })
            .WithWatering(Wednesday + new LocalTime(8, 7), ("minutes", "20"), ("method", logged), ("litres", "120"));
        Watering[] waterings = [.. ReviewPipeline.Run(house.Input).Waterings!.Value];
        Assert.Equal(expected, waterings.Length);
        if (expected == 1)
        {
            Assert.Equal(new LocalTime(8, 10), waterings[0].End!.Value.TimeOfDay);
            Assert.Equal(120, waterings[0].Litres);
            Assert.Contains("also logged in exports/log.csv:2", waterings[0].Source, StringComparison.Ordinal);
        }
    }

    private static SyntheticHouse Valve(SyntheticHouse house, (int Hour, int Minute)[] open, ColumnSettings? settings)
    {
        SyntheticHouse with = house.WithColumn("valves", "valve", t => IsAt(t, open) ? 1 : 0);
        return settings is null ? with : with.WithExport("valves", settings);
    }

    private static bool IsAt(Instant t, (int Hour, int Minute)[] times)
    {
        LocalDateTime local = t.InZone(House.Input.Nursery.Zone).LocalDateTime;
        return local.Date == Wednesday && times.Contains((local.Hour, local.Minute));
    }

    [Fact]
    public void Find_WaterMeterThatRuns_IsAWateringWithItsLitres()
    {
        SyntheticHouse house = Metered(House, [(8, 0), (8, 5), (8, 15), (11, 0)]);
        Watering[] waterings = [.. ReviewPipeline.Run(house.Input).Waterings!.Value];
        Assert.Equal(2, waterings.Length); // ten minutes apart is one watering
        Assert.Equal((120.0, 40.0), (waterings[0].Litres!.Value, waterings[1].Litres!.Value));
        Assert.Equal("08:00 08:20", $"{waterings[0].Start.TimeOfDay:HH:mm} {waterings[0].End!.Value.TimeOfDay:HH:mm}");
        Assert.Null(waterings[0].Method);
        Assert.Contains("water meter", waterings[0].Source, StringComparison.Ordinal);
        Watering boom = ReviewPipeline.Run(house.WithExport("meter", new ColumnSettings(new FieldRef("m", null), "waterVolume", "", "L", 1) { Method = WateringMethod.OverheadBoom, Bench = "B" }).Input).Waterings!.Value[0];
        Assert.Equal((WateringMethod.OverheadBoom, "B"), (boom.Method!.Value, boom.Bench));
    }

    [Fact]
    public void Find_DrippingTap_IsNoWatering()
    {
        SyntheticHouse house = House.WithColumn("meter", "waterVolume", t => IsAt(t, [(8, 0)]) ? 40 : 0.1);
        Assert.Single(ReviewPipeline.Run(house.Input).Waterings!.Value);
    }

    [Fact]
    public void Find_MeterThatRunsWhileTheLogTells_GivesItsLitresAndNoSecondWatering()
    {
        Watering watering = Single(Metered(House, [(8, 0), (8, 5)]).WithWatering(Wednesday + new LocalTime(8, 0), ("minutes", "10"), ("method", "drip")));
        Assert.Equal((WateringMethod.Drip, 80.0), (watering.Method!.Value, watering.Litres!.Value));
    }

    [Fact]
    public void Find_DryingLeft_IsLessTheLaterAndNothingAfterSunset()
    {
        SyntheticHouse sunny = House.WithColumn("climate", "insideRadiation", t => Math.Max(0, 300 * Math.Sin(((t.ToUnixTimeSeconds() % 86400) - 25200) * Math.PI / 36000)));
        double[] left = [.. ((int[])[9, 13, 16, 19]).Select(hour => Single(sunny.WithWatering(Wednesday + new LocalTime(hour, 0), ("minutes", "10"), ("method", "boom"))).DryingLeftMm!.Value)];
        Assert.True(left[0] > left[1] && left[1] > left[2] && left[2] > left[3], string.Join(' ', left));
        Assert.Equal(0, left[3]);
        Assert.InRange(left[0], 0.2, 5); // penman's evaporation of a dull day in a house is a few mm at most
        Assert.Null(Single(sunny.WithWatering(Wednesday + new LocalTime(9, 0), ("minutes", "10"), ("method", "drip"))).DryingLeftMm);
    }

    [Theory]
    [InlineData(33, 100, true)]
    [InlineData(22, 500, true)]
    [InlineData(22, 100, false)]
    public void Find_WaterOntoHotOrSunlitLeaves_IsACaution(double airC, double sun, bool listed)
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(t => new Air(airC + Math.Sin(t.ToUnixTimeSeconds() / 3000.0), 60 + (3 * Math.Sin(t.ToUnixTimeSeconds() / 5000.0)))).WithColumn("sun", "insideRadiation", t => t.InUtc().Hour is > 6 and < 17 ? sun : 0)
            .WithWatering(Wednesday + new LocalTime(13, 0), ("minutes", "10"), ("method", "boom"));
        Review review = ReviewPipeline.Run(house.Input);
        Assert.Equal(listed, review.Findings.Any(f => f.Id == "waterOnHotLeaves"));
        Assert.Equal(sun, review.Waterings!.Value[0].SunOverCropWm2!.Value, 1.0);
        Assert.InRange(review.Waterings.Value[0].LeafTemperatureC!.Value, airC - 4, airC + 8);
    }

    private static SyntheticHouse Metered(SyntheticHouse house, (int Hour, int Minute)[] runs)
        => house.WithColumn("meter", "waterVolume", t => IsAt(t, runs) ? 40 : 0);

    private static Watering Single(SyntheticHouse house) => Assert.Single(ReviewPipeline.Run(house.Input).Waterings!.Value);
}
