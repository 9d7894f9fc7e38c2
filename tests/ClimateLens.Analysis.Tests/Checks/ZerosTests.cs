using ClimateLens.Analysis.Checks;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Checks;

/// <summary>Which zeros are readings. Expected steps worked out by hand.</summary>
public sealed class ZerosTests
{
    private static readonly Duration FiveMinutes = Duration.FromMinutes(5);
    private static readonly Instant Start = SyntheticHouse.Week("2025-W42").Input.Period.Start;

    [Theory]
    [InlineData("outsideTemperature", new[] { 0.4, 0.1, 0, 0, 0, -0.1, -0.3 }, 0)] // frost
    [InlineData("outsideTemperature", new[] { 3.9, 0, 0, 3.8 }, 0)]
    [InlineData("outsideTemperature", new[] { 8.0, 8.1, 0, 0, 8.0 }, 2)]
    [InlineData("outsideTemperature", new[] { 8.0, 0, 0, 0.5, 1 }, 0)] // the value after leads there
    [InlineData("airTemperature", new[] { 18.0, 0, 0, 0, 18 }, 3)]
    [InlineData("airTemperature", new[] { 2.9, 0, 0, 2.9 }, 0)]
    [InlineData("airTemperature", new[] { 3.1, 0, 0, 3.1 }, 2)]
    [InlineData("airTemperature", new[] { 0.0, 0, 0, 18 }, 3)] // nothing before it
    [InlineData("airTemperature", new[] { 0.0, 0, 0 }, 0)] // nothing to judge by
    [InlineData("dewPoint", new[] { 12.0, 0, 0, 12 }, 2)]
    [InlineData("dewPoint", new[] { 1.5, 0, 0, 1.5 }, 0)]
    [InlineData("vapourPressureDeficit", new[] { 0.6, 0, 0, 0.6 }, 2)]
    [InlineData("vapourPressureDeficit", new[] { 0.05, 0, 0, 0.02 }, 0)] // saturated air
    [InlineData("relativeHumidity", new[] { 1.0, 0, 0.4 }, 1)]
    [InlineData("carbonDioxide", new[] { 400.0, 0, 410 }, 1)]
    [InlineData("globalRadiation", new[] { 500.0, 0, 0, 500 }, 0)] // any zero of light, wind, rain and positions may be true
    [InlineData("ventPosition", new[] { 50.0, 0, 50 }, 0)]
    [InlineData("windSpeed", new[] { 9.0, 0, 9 }, 0)]
    public void OutOfNowhere_Stretch_IsJudgedByWhatLeadsToIt(string channel, double[] values, int expected)
        => Assert.Equal(expected, Zeros.OutOfNowhere(values, ChannelCatalogue.Get(channel), FiveMinutes).Count(z => z));

    [Fact]
    public void OutOfNowhere_NeighbourBeyondAnHour_SaysNothing()
    {
        double[] Gap(int steps) => [18, .. Enumerable.Repeat(double.NaN, steps), 0, 0, .. Enumerable.Repeat(double.NaN, steps), 18];
        Assert.Equal(2, Zeros.OutOfNowhere(Gap(11), ChannelCatalogue.Get("airTemperature"), FiveMinutes).Count(z => z));
        Assert.Equal(0, Zeros.OutOfNowhere(Gap(12), ChannelCatalogue.Get("airTemperature"), FiveMinutes).Count(z => z));
    }

    [Theory]
    [InlineData(288, true)]
    [InlineData(287, false)]
    public void OutOfNowhere_NothingButZero_IsNoReadingFromADayOn(int steps, bool expected)
        => Assert.All(Zeros.OutOfNowhere(new double[steps], ChannelCatalogue.Get("airTemperature"), FiveMinutes), zero => Assert.Equal(expected, zero));

    [Fact]
    public void Run_RowOfZeros_FailsEverySmoothSeriesOfTheExportAndNoOther()
    {
        Instant off = Start + Duration.FromHours(30);
        bool Off(Instant t) => t >= off && t < off + Duration.FromHours(2);
        double Or0(Instant t, double value) => Off(t) ? 0 : value;
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithSource("climate", 5,
        [
            ("airTemperature", t => Or0(t, SyntheticHouse.AutumnAir(t).TemperatureC)),
            ("relativeHumidity", t => Or0(t, SyntheticHouse.AutumnAir(t).RelativeHumidityPct)),
            ("vapourPressureDeficit", t => Or0(t, 0.1 + (0.05 * Math.Sin(t.ToUnixTimeSeconds() / 4000.0)))), // so low that 0 would pass alone
            ("insideRadiation", t => Or0(t, 20)),
            ("ventPosition", _ => 0),
        ]).WithColumn("weather", "outsideTemperature", t => Or0(t, 0.2 + (0.2 * Math.Sin(t.ToUnixTimeSeconds() / 9000.0))), house: ReadingBatch.WholeNursery).Input);
        Assert.Equal(
            ["airTemperature 24", "relativeHumidity 24", "vapourPressureDeficit 24", "insideRadiation 24", "ventPosition 0", "outsideTemperature 0"],
            review.Sensors.Select(s => $"{s.Channel} {s.Flags.Fail}"));
    }

    [Fact]
    public void Run_FrostOutside_IsNotFlagged()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir)
            .WithColumn("weather", "outsideTemperature", t => Math.Round(2 * Math.Sin(t.ToUnixTimeSeconds() / 13000.0), 1)).Input);
        Assert.Equal(0, review.Sensors.Single(s => s.Channel == "outsideTemperature").Flags.Fail);
    }

    [Theory]
    [InlineData(96.9, 12)]
    [InlineData(97.1, 0)]
    public void Run_DeficitOfZero_IsBelievedInSaturatedAirOnly(double humidityPct, int expected)
    {
        Instant at = Start + Duration.FromHours(30);
        bool In(Instant t) => t >= at && t < at + Duration.FromHours(1);
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithSource("climate", 5,
        [
            ("airTemperature", t => SyntheticHouse.AutumnAir(t).TemperatureC),
            ("relativeHumidity", t => In(t) ? humidityPct : 90 + Math.Sin(t.ToUnixTimeSeconds() / 4000.0)),
            ("vapourPressureDeficit", t => In(t) ? 0 : 0.1),
        ]).Input);
        Assert.Equal(expected, review.Sensors.Single(s => s.Channel == "vapourPressureDeficit").Flags.Fail);
    }
}
