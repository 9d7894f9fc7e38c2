using System.Collections.Immutable;
using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Checks;

/// <summary>Checks that hold one series against another, or against what it was before.</summary>
public sealed class CrossCheckTests
{
    private static readonly Instant Start = SyntheticHouse.Week("2025-W42").Input.Period.Start;

    // Accuracies assumed: dew point ±1 K, wet bulb ±0.5 K, air ±0.5 K; joint 1.118 and 0.707 K.
    [Theory]
    [InlineData("dewPoint", 1.1, QualityFlag.Pass)]
    [InlineData("dewPoint", 1.13, QualityFlag.Suspect)]
    [InlineData("dewPoint", 2.23, QualityFlag.Suspect)]
    [InlineData("dewPoint", 2.25, QualityFlag.Fail)]
    [InlineData("wetBulbTemperature", 0.7, QualityFlag.Pass)]
    [InlineData("wetBulbTemperature", 0.72, QualityFlag.Suspect)]
    [InlineData("wetBulbTemperature", 1.45, QualityFlag.Fail)]
    public void Check_WetAboveDry_IsInDoubtBeyondTheJointError(string channel, double aboveK, QualityFlag expected)
    {
        Instant at = Start + Duration.FromHours(30);
        HousePeriod period = Checked(SyntheticHouse.Week("2025-W42").WithSource("climate", 5,
        [
            ("airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC),
            (channel, t => SyntheticHouse.AutumnAir(t).TemperatureC + (t >= at && t < at + Duration.FromHours(1) ? aboveK : -1)),
        ]));
        int step = period.FirstStep + (30 * 12) + 6;
        Assert.Equal(expected, period.Frame.Flags(new ColumnKey(channel))[step]);
        Assert.Equal(QualityFlag.Pass, period.Frame.Flags(new ColumnKey("airTemperature"))[step]);
        Assert.Equal(expected != QualityFlag.Pass, period.Notes.Of(new ColumnKey(channel)).Any(n => n.StartsWith("12 steps above the air temperature", StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_WetAboveDry_TakesTheStatedAccuracies()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42")
            .WithSource("climate", 5, [("airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC), ("dewPoint", t => SyntheticHouse.AutumnAir(t).TemperatureC + 0.5)])
            .WithAccuracy("airTemperature", 0.1).WithAccuracy("dewPoint", 0.2);
        Assert.All(Checked(house).Frame.Flags(new ColumnKey("dewPoint")), f => Assert.Equal(QualityFlag.Fail, f));
    }

    [Theory]
    [InlineData(2, 7.0, 2)]
    [InlineData(1, 4.3, 1)] // root of 3² + 3² is 4.243
    [InlineData(3, 4.2, 0)]
    [InlineData(7, 5.0, 7)]
    public void Check_SensorsThatPart_AreInDoubtOnThoseDays(int days, double differs, int expectedDays)
    {
        HousePeriod period = Checked(TwoSensors(t => t >= Start && t < Start + Duration.FromDays(days) ? differs : 0.5));
        foreach (string sensor in (string[])["A", "B"])
        {
            ColumnKey key = new("relativeHumidity", sensor);
            Assert.Equal(expectedDays * 288, period.Frame.Flags(key).Skip(period.FirstStep).Count(f => f == QualityFlag.Suspect));
            Assert.Equal(expectedDays * 288, Enumerable.Range(0, period.Frame.Axis.Count).Count(i => period.Checks[key].Found(QualityCheck.SensorPair, i)));
        }
    }

    [Fact]
    public void Run_SensorsThatPartOnTwoDays_AreToldAndKeepTheTotal()
    {
        Review review = ReviewPipeline.Run(TwoSensors(t => t >= Start + Duration.FromDays(2) && t < Start + Duration.FromDays(4) ? 8 : 0).Input);
        SensorReport b = review.Sensors.Single(s => s.Sensor == "B");
        Assert.Contains("Reads otherwise than \"A\" of export \"climate1\" on 2 days of the period, by up to 8.0 % less over a day: more than the accuracy (in part assumed) of the two allows (4.2 %).", b.Notes);
        Assert.Equal("Not all readings of relative humidity \"A\" can be trusted: two humidity sensors part by more than their accuracy (in part assumed) allows on 2 days; the review uses \"A\" of export \"climate1\".", review.Findings.Single(f => f.Id == "sensorNotTrusted").Text);
        Assert.NotNull(review.RiskHours);
    }

    [Fact]
    public void Run_SensorsThatPartAllWeek_KeepTheTotal()
        => Assert.NotNull(ReviewPipeline.Run(TwoSensors(_ => 9).Input).RiskHours);

    [Fact]
    public void Run_UnitThatChanges_IsInDoubtFromThereOnWithTheMend()
    {
        Instant at = Start + Duration.FromDays(3) + Duration.FromHours(9);
        SyntheticHouse house = SyntheticHouse.Week("2025-W42")
            .WithSource("climate", 5, [("airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC), ("relativeHumidity", t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct * (t >= at ? 0.01 : 1))])
            .WithExport("climate", new ColumnSettings(new FieldRef("rh", null), "relativeHumidity", "", "%", 1));
        Review review = ReviewPipeline.Run(house.Input);
        SensorReport sensor = review.Sensors.Single(s => s.Channel == "relativeHumidity");
        Assert.Contains("From Thu 16 Oct 09:00 the values look as if they were in 1, not in %: used as they are, and counted as doubtful. If so, write unitChanges = [{ from = 2025-10-16T09:00:00, unit = \"1\" }] for this column.", sensor.Notes);
        HousePeriod period = Checked(house);
        int first = Enumerable.Range(0, period.Frame.Axis.Count).First(i => period.Checks[new ColumnKey("relativeHumidity")].Found(QualityCheck.UnitChange, i));
        Assert.Equal(at, period.Frame.Axis.StartOf(first));
        Assert.Contains("their unit seems to change", review.Findings.Single(f => f.Id == "sensorNotTrusted").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_CodeAmongFastReadings_DoesNotPullTheMean()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithColumn("fast", "leafTemperature", t => t.ToUnixTimeSeconds() % 3600 == 600 ? -999 : 20 + Math.Sin(t.ToUnixTimeSeconds() / 3000.0), 1);
        HousePeriod period = Checked(house);
        Assert.All(period.Frame.Values(new ColumnKey("leafTemperature")), v => Assert.InRange(v, 18.9, 21.1));
    }

    [Fact]
    public void Run_CodeBetweenSlowReadings_DrawsNoLine()
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithColumn("slow", "outsideTemperature", t => t.InUtc().Hour == 12 ? -999 : 10 + Math.Sin(t.ToUnixTimeSeconds() / 9000.0), 60);
        HousePeriod period = Checked(house);
        ImmutableArray<double> values = period.Frame.Values(new ColumnKey("outsideTemperature"));
        ImmutableArray<QualityFlag> flags = period.Frame.Flags(new ColumnKey("outsideTemperature"));
        Assert.All(Enumerable.Range(0, values.Length), i => Assert.True(double.IsNaN(values[i]) || values[i] is > 8.9 and < 11.1 || (values[i] == -999 && flags[i] == QualityFlag.Fail)));
        Assert.Contains(-999, values);
    }

    [Theory]
    [InlineData(4.9, 1)]
    [InlineData(5.1, 1)]
    public void Flags_StepThatStays_IsInDoubtAboveItsLimit(double step, int steps)
    {
        Channel dewPoint = ChannelCatalogue.Get("dewPoint") with { StepLimit = 5 };
        double[] values = [.. Enumerable.Range(0, 100).Select(i => 10 + Math.Sin(i / 9.0) + (i >= 50 ? step : 0))];
        SeriesFlags flags = SeriesChecks.Flags(values, dewPoint, Duration.FromMinutes(5));
        double jump = Math.Abs(values[50] - values[49]);
        Assert.Equal(jump > 5 ? steps : 0, Enumerable.Range(0, 100).Count(i => flags.Found(QualityCheck.RateOfChange, i)));
        Assert.Equal(jump > 5, flags.Found(QualityCheck.RateOfChange, 50));
    }

    [Fact]
    public void Flags_LoneSpike_CostsNoStepBesideIt()
    {
        double[] values = [.. Enumerable.Range(0, 100).Select(i => 20 + Math.Sin(i / 9.0))];
        values[50] += 30;
        SeriesFlags flags = SeriesChecks.Flags(values, ChannelCatalogue.Get("airTemperature"), Duration.FromMinutes(5));
        Assert.Equal([50], Enumerable.Range(0, 100).Where(i => flags.RolledUp[i] is QualityFlag.Suspect or QualityFlag.Fail));
    }

    [Theory]
    [InlineData(0.29, 400, true)]
    [InlineData(0.31, 400, false)]
    [InlineData(0.29, 288, false)] // a day needs both its ends
    [InlineData(0.29, 289, true)]
    public void Flags_SignalThatHardlyMoves_IsInDoubtAfterADay(double rangeK, int steps, bool expected)
    {
        double[] values = [.. Enumerable.Range(0, steps).Select(i => 18 + (i % 2 * rangeK))];
        SeriesFlags flags = SeriesChecks.Flags(values, ChannelCatalogue.Get("airTemperature"), Duration.FromMinutes(5));
        Assert.Equal(expected ? steps : 0, flags.RolledUp.Count(f => f == QualityFlag.Suspect));
    }

    private static SyntheticHouse TwoSensors(Func<Instant, double> differs) => SyntheticHouse.Week("2025-W42")
        .WithColumn("climate", "airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC)
        .WithColumn("climate1", "relativeHumidity@A", t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct)
        .WithColumn("climate2", "relativeHumidity@B", t => SyntheticHouse.AutumnAir(t).RelativeHumidityPct - differs(t));

    private static HousePeriod Checked(SyntheticHouse house) => Quality.Check(Alignment.Align(house.Input));
}
