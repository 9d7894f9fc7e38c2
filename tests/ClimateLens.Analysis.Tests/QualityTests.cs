using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

/// <summary>Quality as a review shows it: what drops out, what is counted, what is said.</summary>
public sealed class QualityTests
{
    private static readonly SyntheticHouse House = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
    private static readonly Instant Start = House.Input.Period.Start;

    [Fact]
    public void Run_CleanWeek_PassesEveryStepOfThePeriodOnly()
    {
        foreach (SensorReport sensor in ReviewPipeline.Run(House.Input).Sensors)
        {
            Assert.Equal(new FlagCounts(7 * 288, 0, 0, 0, 0), sensor.Flags);
        }
    }

    [Fact]
    public void Run_FaultsInTheRunIn_AreNotCounted()
    {
        Instant before = Start - Duration.FromHours(20);
        Review review = ReviewPipeline.Run(With(t => t >= before && t < before + Duration.FromHours(1) ? new Air(80, 200) : SyntheticHouse.AutumnAir(t)).Input);
        Assert.All(review.Sensors, s => Assert.Equal(7 * 288, s.Flags.Pass));
    }

    [Fact]
    public void Run_Spike_DropsOutAndIsNamed()
    {
        Instant spike = Start + Duration.FromHours(50);
        Review review = ReviewPipeline.Run(With(t => t == spike ? new Air(35, SyntheticHouse.AutumnAir(t).RelativeHumidityPct) : SyntheticHouse.AutumnAir(t)).Input);
        SensorReport sensor = review.Sensors.Single(s => s.Channel == "airTemperature");
        Assert.Equal(new FlagCounts((7 * 288) - 1, 0, 0, 1, 0), sensor.Flags);
        Assert.Contains(sensor.Notes, n => n.Contains("jumped", StringComparison.Ordinal));
        Assert.Equal(ReviewPipeline.Run(House.Input).Hours[50].AirTemperatureC!.Value, review.Hours[50].AirTemperatureC!.Value, 0.1);
    }

    [Fact]
    public void Run_StuckHumidity_DropsOutAndBecomesAGapAndAFinding()
    {
        Instant stuck = Start + Duration.FromHours(48);
        Review review = ReviewPipeline.Run(With(t => t >= stuck && t < stuck + Duration.FromHours(20) ? new Air(SyntheticHouse.AutumnAir(t).TemperatureC, 81.3) : SyntheticHouse.AutumnAir(t)).Input);
        SensorReport sensor = review.Sensors.Single(s => s.Channel == "relativeHumidity");
        Assert.InRange(sensor.Flags.Fail, 20 * 12, (20 * 12) + 2);
        Assert.Contains(sensor.Notes, n => n.Contains("Did not move for 20 h", StringComparison.Ordinal));
        Assert.All(review.Hours[48..68], h => Assert.Null(h.Risk));
        Gap gap = Assert.Single(review.Coverage.Gaps);
        Assert.Equal("failedCheck", gap.Why);
        Assert.Equal(20, gap.Hours, 0.2);
        Assert.Equal("Not all readings of relative humidity can be trusted: values stood still.", review.Findings.Single(f => f.Id == "sensorNotTrusted").Text);
    }

    [Theory]
    [InlineData("B", 7.0, 3.0, 3.0, true)]
    [InlineData("B", 4.2, 3.0, 3.0, false)] // root of 3² + 3² is 4.243
    [InlineData("B", 4.3, 3.0, 3.0, true)]
    [InlineData("B", 2.9, 2.0, 2.0, true)] // 2.828
    [InlineData("", -7.0, 3.0, 3.0, true)] // two exports of one sensor
    public void Run_TwoHumiditySensors_MayDifferByTheirAccuracies(string sensor, double differs, double first, double second, bool expected)
    {
        string a = sensor.Length > 0 ? "relativeHumidity@A" : "relativeHumidity", b = sensor.Length > 0 ? "relativeHumidity@B" : "relativeHumidity";
        SyntheticHouse house = SyntheticHouse.Week("2025-W42")
            .WithColumn("climate", "airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC)
            .WithColumn("climate1", a, t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct)
            .WithColumn("climate2", b, t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct - differs)
            .WithAccuracy("relativeHumidity", first, sensor.Length > 0 ? "A" : "");
        house = sensor.Length > 0 ? house.WithAccuracy("relativeHumidity", second, "B") : house;
        Review review = ReviewPipeline.Run(house.Input);
        SensorReport[] sensors = [.. review.Sensors.Where(s => s.Channel == "relativeHumidity")];
        string size = Math.Abs(differs).ToString("F1", System.Globalization.CultureInfo.InvariantCulture);
        Assert.All(sensors, s => Assert.Equal(expected, s.Notes.Any(n => n.StartsWith($"Reads {size} % ", StringComparison.Ordinal) && n.Contains("over 2016 steps", StringComparison.Ordinal))));
        Finding? finding = review.Findings.SingleOrDefault(f => f.Id == "sensorNotTrusted");
        Assert.Equal(expected, finding is not null);
        Assert.True(finding is null || finding.Text.Contains($"two humidity sensors differ by {size} % on average, more than their stated accuracy allows; the review uses {(sensor.Length > 0 ? "\"A\" of " : "")}export \"climate1\"", StringComparison.Ordinal), finding?.Text);
    }

    [Theory]
    [InlineData(85, true)]
    [InlineData(83, false)]
    public void Run_MostReadingsDoubtful_GivesNoTotalButTheHours(int doubtfulHours, bool expected)
    {
        // 102 to 103 % is used and doubtful; half of 168 h is 84 h.
        Instant end = Start + Duration.FromHours(doubtfulHours);
        Review review = ReviewPipeline.Run(With(t => t >= Start && t < end ? SyntheticHouse.AutumnAir(t) with { RelativeHumidityPct = 102.5 + (0.4 * Math.Sin(t.ToUnixTimeSeconds() / 900.0)) } : SyntheticHouse.AutumnAir(t)).Input);
        Assert.Equal(expected, review.RiskHours is null);
        Assert.Equal(168, review.Hours.Count(h => h.Risk is not null));
        Assert.NotNull(review.RiskHoursBefore);
        Assert.Equal(expected, review.NotKnown.Any(u => u.What == "riskHours" && u.Why.StartsWith("More than half of the used readings of relative humidity are doubtful", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("relativeHumidity", 0.01, 0.0, "looks like a fraction: unit = \"1\"")]
    [InlineData("airTemperature", 1.8, 32.0, "looks like degrees Fahrenheit: unit = \"[degF]\"")]
    [InlineData("vapourPressureDeficit", 0.1, 0.0, "stays near zero day and night (under 0.15 kPa): check the unit")]
    public void Run_ValuesOfAnotherUnit_AreHintedAt(string channel, double factor, double offset, string hint)
    {
        (string Column, Func<Instant, double> Value)[] columns =
        [
            ("airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC),
            channel == "vapourPressureDeficit" ? (channel, t => 0.5 + (0.4 * Math.Sin(t.ToUnixTimeSeconds() / 9000.0))) : ("relativeHumidity", t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct),
        ];
        Review right = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithSource("climate", 5, columns).Input);
        Assert.DoesNotContain(right.Findings, f => f.Id == "sensorNotTrusted");
        var wrong = columns.Select(c => c.Column == channel ? (c.Column, t => (c.Value(t) * factor) + offset) : c).ToArray();
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithSource("climate", 5, wrong).Input);
        Assert.Contains(review.Sensors.Single(s => s.Channel == channel).Notes, n => n.Equals(char.ToUpperInvariant(hint[0]) + hint[1..] + ".", StringComparison.Ordinal));
        Assert.Contains(hint, review.Findings.Single(f => f.Id == "sensorNotTrusted").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SaturatedHumidity_IsUsedAndCalledDoubtful()
    {
        Instant wet = Start + Duration.FromHours(40);
        Review review = ReviewPipeline.Run(With(t => t >= wet && t < wet + Duration.FromHours(14) ? new Air(SyntheticHouse.AutumnAir(t).TemperatureC, 100) : SyntheticHouse.AutumnAir(t)).Input);
        SensorReport sensor = review.Sensors.Single(s => s.Channel == "relativeHumidity");
        Assert.Equal(0, sensor.Flags.Fail);
        Assert.InRange(sensor.Flags.Suspect, 14 * 12, (14 * 12) + 2);
        Assert.Contains(sensor.Notes, n => n.Contains("condensing air or a saturated sensor", StringComparison.Ordinal));
        Assert.All(review.Hours[41..53], h => Assert.True(h.Risk));
    }

    [Fact]
    public void Run_SeveralFaults_AreTheTitleOfTheFinding()
    {
        Instant off = Start + Duration.FromHours(20), wet = Start + Duration.FromHours(40), hot = Start + Duration.FromHours(100);
        Finding finding = ReviewPipeline.Run(With(t => (t - off).TotalHours is >= 0 and < 6 ? new Air(0, 0)
            : (t - wet).TotalHours is >= 0 and < 14 ? SyntheticHouse.AutumnAir(t) with { RelativeHumidityPct = 100 }
            : (t - hot).TotalHours is >= 0 and < 4 ? SyntheticHouse.AutumnAir(t) with { RelativeHumidityPct = 180 }
            : SyntheticHouse.AutumnAir(t)).Input).Findings.Single(f => f.Id == "sensorNotTrusted");
        Assert.Equal("Not all readings of air temperature and relative humidity can be trusted: values are 0 as from an instrument without power, values lie outside the usual or possible range and values stayed at or above 99.5 % (condensing air or a saturated sensor).", finding.Text);
    }

    [Fact]
    public void Run_TemperatureAndHumidityBothZero_FailTogetherAndOneAloneIsNamedAsSuch()
    {
        Instant off = Start + Duration.FromHours(30);
        bool Off(Instant t) => t >= off && t < off + Duration.FromHours(2);
        Review both = ReviewPipeline.Run(With(t => Off(t) ? new Air(0, 0) : SyntheticHouse.AutumnAir(t)).Input);
        Assert.All(both.Sensors, s => Assert.Equal(24, s.Flags.Fail));
        Assert.All(both.Sensors, s => Assert.Contains(s.Notes, n => n.Contains("both exactly 0", StringComparison.Ordinal)));
        Assert.All(both.Sensors, s => Assert.DoesNotContain(s.Notes, n => n.Contains("used, and counted", StringComparison.Ordinal)));
        Review one = ReviewPipeline.Run(With(t => Off(t) ? new Air(0, 40) : SyntheticHouse.AutumnAir(t)).Input);
        Assert.All(one.Sensors, s => Assert.DoesNotContain(s.Notes, n => n.Contains("both exactly 0", StringComparison.Ordinal)));
        SensorReport alone = one.Sensors.Single(s => s.Channel == "airTemperature");
        Assert.Equal(24, alone.Flags.Fail);
        Assert.Contains("24 steps of exactly 0 that no neighbouring value leads to, as from an instrument without power: not used.", alone.Notes);
    }

    [Fact]
    public void Run_Gaps_SayWhy()
    {
        Instant first = Start + Duration.FromHours(10), second = Start + Duration.FromHours(60);
        SyntheticHouse house = With(t => t >= second && t < second + Duration.FromHours(3) ? new Air(double.NaN, 80) : SyntheticHouse.AutumnAir(t))
            .WithoutRows(first, first + Duration.FromHours(2));
        Coverage coverage = ReviewPipeline.Run(house.Input).Coverage;
        Assert.Equal(["noReadings", "missingValue"], coverage.Gaps.Select(g => g.Why));
        Assert.Equal([2.0, 3.0], coverage.Gaps.Select(g => g.Hours));
        Assert.Equal(first, coverage.Gaps[0].Start.ToInstant());
        Assert.Equal(168 - 5, coverage.HoursWithData);
    }

    [Theory]
    [InlineData(2, 0)]
    [InlineData(3, 1)]
    public void Run_ShortGap_IsNamedFromThreeStepsOn(int steps, int expectedGaps)
    {
        Instant at = Start + Duration.FromHours(10);
        SyntheticHouse house = House.WithoutRows(at, at + Duration.FromMinutes(5 * steps));
        Assert.Equal(expectedGaps, ReviewPipeline.Run(house.Input).Coverage.Gaps.Length);
    }

    [Fact]
    public void Run_StatedAndAssumedAccuracy_AreNamedWithTheirSource()
    {
        Review review = ReviewPipeline.Run(House.WithAccuracy("relativeHumidity", 2).Input);
        Assert.Contains("Accuracy ±2 % relative humidity (nursery file: data sheet).", review.Sensors.Single(s => s.Channel == "relativeHumidity").Notes);
        Assert.Contains("Accuracy ±0.5 K (assumed; common practice, no source).", review.Sensors.Single(s => s.Channel == "airTemperature").Notes);
        Assert.Contains(review.Provenance.Thresholds, t => t.Name == "relativeHumidityAccuracy" && t.Value == 2 && t.Source == "nursery file: data sheet");
    }

    [Fact]
    public void Run_NoReadings_IsAWholeReviewOfNothing()
    {
        foreach (SyntheticHouse house in (SyntheticHouse[])[SyntheticHouse.Week("2025-W42"), With(_ => new Air(double.NaN, double.NaN)), House.WithoutRows(House.Input.RunIn.Start, House.Input.Period.End)])
        {
            Review review = ReviewPipeline.Run(house.Input);
            Assert.Equal(0, review.Coverage.HoursWithData);
            Assert.Null(review.RiskHours);
            Assert.Equal(168, review.Hours.Length);
            Assert.Equal(168, Assert.Single(review.Coverage.Gaps).Hours);
            Assert.Contains(review.Findings, f => f.Id == "tooLittleData");
        }
    }

    [Fact]
    public void Run_OneReadingOnly_IsReviewedWithoutFault()
    {
        long stamp = (Start + Duration.FromHours(30)).ToUnixTimeTicks() / 10;
        var columns = ImmutableSortedDictionary<string, double[]>.Empty.Add("airTemperature", [18]).Add("relativeHumidity", [80]);
        foreach (int step in (int[])[300, 0])
        {
            Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithBatch(new ReadingBatch("1", "climate", StampSide.Instant, step, [stamp], columns)).Input);
            Assert.Null(review.RiskHours);
            Assert.Equal(1, review.Sensors[0].Flags.Pass);
        }
    }

    private static SyntheticHouse With(Func<Instant, Air> air) => SyntheticHouse.Week("2025-W42").WithAir(air);
}
