using System.Collections.Immutable;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class AlignmentTests
{
    private static readonly SyntheticHouse Empty = SyntheticHouse.Week("2025-W42", runInDays: 0);
    private static readonly Instant Start = Empty.Input.Period.Start;

    [Theory]
    [InlineData(30, 1)]
    [InlineData(60, 1)]
    [InlineData(61, 2)]
    [InlineData(300, 5)]
    [InlineData(301, 5)]
    [InlineData(299, 5)]
    [InlineData(310, 6)]
    [InlineData(420, 10)]
    [InlineData(900, 15)]
    [InlineData(1000, 20)]
    [InlineData(3600, 60)]
    [InlineData(7200, 60)]
    public void GridStep_NativeStep_IsTheNextPartOfAnHour(int seconds, int expectedMinutes)
        => Assert.Equal(Duration.FromMinutes(expectedMinutes), GridStep.For(seconds));

    [Theory]
    [InlineData(1, 60)]
    [InlineData(5, 12)]
    [InlineData(10, 6)]
    [InlineData(15, 4)]
    public void Align_HumiditySource_GivesTheStep(int minutes, int stepsPerHour)
    {
        SyntheticHouse house = SyntheticHouse.Week("2025-W42", stepMinutes: minutes)
            .WithColumn("weather", "outsideTemperature", _ => 9, stepMinutes: 30, house: ReadingBatch.WholeNursery)
            .WithAir(SyntheticHouse.AutumnAir);
        HousePeriod period = Alignment.Align(house.Input);
        Assert.Equal(stepsPerHour, period.StepsPerHour);
        Assert.Equal(14 * 24 * stepsPerHour, period.Frame.Axis.Count);
        Assert.Equal(7 * 24 * stepsPerHour, period.FirstStep);
    }

    [Fact]
    public void Align_HumidityAndTemperatureFromTwoSources_TakesTheStepOfHumidity()
    {
        SyntheticHouse house = Empty
            .WithColumn("a", "airTemperature", _ => 18, stepMinutes: 5)
            .WithColumn("b", "relativeHumidity", _ => 80, stepMinutes: 15);
        Assert.Equal(4, Alignment.Align(house.Input).StepsPerHour);
    }

    [Fact]
    public void Align_FasterSource_TakesMeansOfStatesAndSumsOfAmounts()
    {
        ImmutableArray<double> temperature = Column(Rows("airTemperature", 60, (0, 10), (60, 20), (120, 30), (180, 20), (240, 20), (300, 7)));
        Assert.Equal(20, temperature[0]);
        Assert.Equal(7, temperature[1]);
        ImmutableArray<double> litres = Column(Rows("waterVolume", 60, (0, 10), (60, 20), (240, 20), (300, 7)));
        Assert.Equal(50, litres[0]);
        Assert.Equal(7, litres[1]);
        Assert.True(double.IsNaN(litres[2]));
    }

    [Fact]
    public void Align_SlowerSmoothSource_DrawsAStraightLineWithinTwiceItsStep()
    {
        ImmutableArray<double> values = Column(Rows("outsideTemperature", 900, (0, 10), (900, 13), (2700, 19), (4560, 30)));
        Assert.Equal([10, 11, 12, 13, 14, 15, 16, 17, 18, 19], values.Take(10).Select(v => Math.Round(v, 9)));
        Assert.True(double.IsNaN(values[10])); // 31 min to the next reading, over twice the step
        Assert.Equal(30, values[15]);
    }

    [Fact]
    public void Align_SlowerHeldSource_HoldsAndStopsInALongGap()
    {
        ImmutableArray<double> values = Column(Rows("ventPosition", 900, (0, 10), (900, 40), (9000, 70)));
        Assert.Equal([10, 10, 10, 40, 40, 40], values.Take(6));
        Assert.True(double.IsNaN(values[6]));
        Assert.Equal(70, values[30]);
    }

    [Fact]
    public void Align_HourlySource_FillsAnHourAndLeavesTwoOpen()
    {
        ImmutableArray<double> values = Column(Rows("outsideTemperature", 3600, (0, 10), (3602, 22), (10802, 30)));
        Assert.Equal(11, values[1], 2);
        Assert.True(double.IsNaN(values[13]));
        Assert.Equal(30, values[36]);
    }

    [Theory]
    [InlineData(StampSide.Instant, 1)]
    [InlineData(StampSide.IntervalStart, 1)]
    [InlineData(StampSide.IntervalEnd, 0)]
    public void Align_StampOnAnEdge_BelongsToTheStepThatItLabels(StampSide side, int expectedStep)
    {
        ImmutableArray<double> values = Column(Rows("airTemperature", 300, (300, 18)) with { StampSide = side });
        Assert.Equal(18, values[expectedStep]);
        Assert.Equal(1, values.Count(v => !double.IsNaN(v)));
    }

    [Fact]
    public void Align_SlowIntervalMeans_HoldOverTheirInterval()
    {
        ReadingBatch ends = Rows("globalRadiation", 900, (900, 100), (1800, 200)) with { StampSide = StampSide.IntervalEnd };
        Assert.Equal([100, 100, 100, 200, 200, 200, double.NaN], Column(ends).Take(7));
    }

    [Fact]
    public void Align_SlowAmounts_KeepTheirSum()
    {
        ReadingBatch hourly = Rows("rain", 3600, (3600, 1.2), (7200, 2.4)) with { StampSide = StampSide.IntervalEnd };
        ImmutableArray<double> values = Column(hourly);
        Assert.Equal(0.1, values[0], 12);
        Assert.Equal(0.2, values[12], 12);
        Assert.Equal(3.6, values.Where(v => !double.IsNaN(v)).Sum(), 12);
    }

    [Fact]
    public void Align_StampsThatStray_LeaveNoHoleButAMissingRowDoes()
    {
        ImmutableArray<double> strayed = Column(Rows("airTemperature", 300, (1, 10), (301, 11), (599, 12), (901, 13)));
        Assert.Equal(4, strayed.Take(4).Count(v => !double.IsNaN(v)));
        ImmutableArray<double> missing = Column(Rows("airTemperature", 300, (0, 10), (300, 11), (900, 13)));
        Assert.True(double.IsNaN(missing[2]));
    }

    [Fact]
    public void Align_TwoHumiditySensors_FirstByNameIsMainAndBothAreReported()
    {
        SyntheticHouse house = Empty
            .WithColumn("z", "relativeHumidity@B", _ => 80)
            .WithColumn("climate", "airTemperature", _ => 18)
            .WithColumn("y", "relativeHumidity@A", _ => 70);
        HousePeriod period = Alignment.Align(house.Input);
        Assert.Equal("A", period.Humidity!.Sensor);
        Assert.Contains("main one of 2", Assert.Single(period.Notes.Of(period.Humidity.Key)), StringComparison.Ordinal);
        Assert.Equal(3, period.Series.Length);
        Series other = period.Series.Single(s => s.Sensor == "B");
        Assert.Contains("\"A\"", Assert.Single(period.Notes.Of(other.Key)), StringComparison.Ordinal);
    }

    [Fact]
    public void Align_SameColumnInTwoSources_KeepsBoth()
    {
        SyntheticHouse house = Empty.WithColumn("b", "airTemperature", _ => 18).WithColumn("a", "airTemperature", _ => 19);
        HousePeriod period = Alignment.Align(house.Input);
        Assert.Equal(2, period.Series.Select(s => s.Key).Distinct().Count());
        Assert.Equal("a", period.Temperature!.Source);
    }

    [Fact]
    public void Run_ComputerChangedInMidWeek_JoinsBothExports()
    {
        Instant change = Start + Duration.FromHours(60);
        SyntheticHouse whole = Empty.WithAir(SyntheticHouse.ChangingAir, "new");
        SyntheticHouse house = Empty
            .WithAir(t => t < change ? SyntheticHouse.ChangingAir(t) : new Air(double.NaN, double.NaN), "a-old")
            .WithAir(t => t >= change ? SyntheticHouse.ChangingAir(t) : new Air(double.NaN, double.NaN), "b-new");
        Review joined = ReviewPipeline.Run(house.Input), one = ReviewPipeline.Run(whole.Input);
        Assert.Equal(168, joined.Coverage.HoursWithData);
        Assert.Equal(one.RiskHours, joined.RiskHours);
        Assert.Equal(one.Hours.AsEnumerable(), joined.Hours.AsEnumerable());
        Assert.Equal(["b-new", "a-old"], joined.Sensors.Where(s => s.Channel == "relativeHumidity").Select(s => s.Source));
        Assert.Equal([108 * 12, 60 * 12], joined.Sensors.Where(s => s.Channel == "relativeHumidity").Select(s => s.Flags.Pass));
        Assert.Contains("720 steps filled in from export \"a-old\".", joined.Sensors.First(s => s.Source == "b-new").Notes);
        Assert.Contains("Used where export \"b-new\" has nothing usable: 720 steps.", joined.Sensors.First(s => s.Source == "a-old").Notes);
    }

    [Fact]
    public void Run_NurseryWideSource_NeverRulesOverTheHousesOwn()
    {
        Instant end = Start + Duration.FromHours(30);
        HousePeriod period = Alignment.Align(Empty
            .WithColumn("all", "relativeHumidity", _ => 60, house: ReadingBatch.WholeNursery)
            .WithColumn("own", "relativeHumidity", t => t < end ? 80 : double.NaN).Input);
        Assert.Equal("own", period.Humidity!.Source);
    }

    [Fact]
    public void Align_TwoHumiditySources_TakesTheStepOfTheOneWithMoreUsableReadings()
    {
        Instant end = Start + Duration.FromHours(30);
        SyntheticHouse house = Empty
            .WithColumn("a", "relativeHumidity", t => t < end ? 80 : 999, stepMinutes: 60)
            .WithColumn("b", "relativeHumidity", _ => 80, stepMinutes: 15);
        Assert.Equal(4, Alignment.Align(house.Input).StepsPerHour);
    }

    [Fact]
    public void Run_RulingExportFails_IsFilledFromTheOther()
    {
        Instant at = Start + Duration.FromHours(40);
        SyntheticHouse house = Empty
            .WithAir(t => t >= at && t < at + Duration.FromHours(2) ? new Air(0, 0) : SyntheticHouse.AutumnAir(t), "a")
            .WithAir(t => t >= at - Duration.FromHours(20) ? SyntheticHouse.AutumnAir(t) : new Air(0, 0), "b");
        Review review = ReviewPipeline.Run(house.Input);
        Assert.Equal(168, review.Coverage.HoursWithData);
        Assert.Equal(ReviewPipeline.Run(Empty.WithAir(SyntheticHouse.AutumnAir).Input).Hours.AsEnumerable(), review.Hours.AsEnumerable());
    }

    [Fact]
    public void Align_NoBatches_GivesAnEmptyFrameOverThePeriod()
    {
        HousePeriod period = Alignment.Align(Empty.Input);
        Assert.Equal(168, period.Frame.Axis.Count);
        Assert.Empty(period.Series);
    }

    private static ReadingBatch Rows(string column, int stepSeconds, params (int Seconds, double Value)[] rows) => new(
        "1",
        "rows",
        StampSide.Instant,
        stepSeconds,
        [.. rows.Select(r => (Start + Duration.FromSeconds(r.Seconds)).ToUnixTimeTicks() / 10)],
        ImmutableSortedDictionary<string, double[]>.Empty.Add(column, [.. rows.Select(r => r.Value)]));

    /// <summary>The column on the five-minute grid of a house whose humidity comes every five minutes.</summary>
    private static ImmutableArray<double> Column(ReadingBatch batch)
    {
        HousePeriod period = Alignment.Align(Empty.WithColumn("climate", "relativeHumidity", _ => 80).WithBatch(batch).Input);
        Assert.Equal(12, period.StepsPerHour);
        return period.Frame.Values(ColumnKey.Parse(batch.Columns.Keys.Single()));
    }
}
