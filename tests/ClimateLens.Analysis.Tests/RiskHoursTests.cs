using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class RiskHoursTests
{
    /// <summary>Moves just enough not to count as stuck.</summary>
    private static double Jitter(Instant at) => 0.02 * Math.Sin(at.ToUnixTimeSeconds() / 4000.0);

    /// <summary>A little movement in the afternoon, as even the steadiest house has; 0 in other hours.</summary>
    private static double Afternoon(Instant at) => Math.Max(0, Math.Cos((at.ToUnixTimeSeconds() - 54000) * Math.PI / 43200) - 0.97) / 0.03;

    /// <summary>Without the assumed difference between canopy and sensor.</summary>
    private static readonly RiskRules Plain = new() { CanopyDifference = false };
    private static readonly RiskRules NoOffsetError = new(LeafNightOffsetErrorK: 0) { CanopyDifference = false, LeafBalanceErrorK = 0 };

    private static SyntheticHouse Steady(double temperatureC, double humidityPct, RiskRules? rules = null)
        => SyntheticHouse.Week("2025-W42")
            .WithAir(t => new Air(temperatureC + Jitter(t) + (0.4 * Afternoon(t)), humidityPct + (5 * Jitter(t)) + (1.5 * Afternoon(t))))
            .WithRules(rules ?? Plain)
            .WithAccuracy("airTemperature", 0.001)
            .WithAccuracy("relativeHumidity", 0.001);

    [Fact]
    public void Find_NinetyPercentAtEighteen_IsRiskByNightOnly()
    {
        // Dew point 16.33 °C at 18 °C and 90 % (computed table in docs/science/risk-hours.md, WMO coefficients): the margin is 1.67 K
        // by day and 0.67 K at night, with a dry leaf 1 K under the air; dark transpiration cools it by another 0.05 to 0.15 K.
        Review review = ReviewPipeline.Run(Steady(18, 90).Input);
        ReviewHour night = review.Hours[2], noon = review.Hours[12];
        Assert.Equal(16.334, night.DewPointC!.Value, 0.1);
        Assert.Equal(0.67, night.DewPointMarginK!.Value, 0.15);
        Assert.Equal(1.67, noon.DewPointMarginK!.Value, 0.15);
        Assert.Equal(17, night.LeafTemperatureC!.Value, 0.1);
        Assert.All(review.Hours.Where(h => Math.Abs(h.DewPointMarginK!.Value - 1) > 0.05), h => Assert.Equal(h.DewPointMarginK < 1, h.Risk));
        Assert.InRange(review.RiskHours!.Value, 13 * 7, 14 * 7); // night of mid-October at 53.2° N: 13.4 h
    }

    [Theory]
    // Margin at night 0.95 K and 1.2 K (less some 0.1 K of dark transpiration) for a margin rule of 1 K: fires, and just does not.
    [InlineData(88.4, 1)]
    [InlineData(86.8, 0)]
    public void Find_MarginEitherSideOfTheRule_FiresOrNot(double humidityPct, double expectedProbability)
    {
        RiskRules rules = NoOffsetError;
        ReviewHour night = ReviewPipeline.Run(Steady(18, humidityPct, rules).Input).Hours[1];
        Assert.Equal(expectedProbability, night.RiskProbability!.Value);
        Assert.Equal(expectedProbability == 1, night.DewPointMarginK < 1);
    }

    [Theory]
    [InlineData(5.1, true)]
    [InlineData(4.9, false)]
    [InlineData(29.9, true)]
    [InlineData(30.1, false)]
    public void Find_TemperatureEitherSideOfTheRange_FiresOrNot(double temperatureC, bool expected)
        => Assert.Equal(expected, ReviewPipeline.Run(Steady(temperatureC, 97).Input).Hours[1].Risk);

    [Fact]
    public void Find_MeasuredLeaf_TakesItAndNotTheAssumption()
    {
        SyntheticHouse house = Steady(18, 90).WithColumn("leaf", "leafTemperature", t => 19 + Jitter(t) + (0.4 * Afternoon(t))).WithAccuracy("leafTemperature", 0.001);
        Review review = ReviewPipeline.Run(house.Input);
        Assert.Equal(19, review.Hours[2].LeafTemperatureC!.Value, 0.03);
        Assert.Equal(0, review.RiskHours!.Value);
        Assert.Contains(review.Provenance.Methods, m => m.What == "leaf temperature" && m.How.StartsWith("Measured", StringComparison.Ordinal));
    }

    [Fact]
    public void Find_LeafBelowDewPoint_GetsWetAndAboveStaysDry()
    {
        Assert.True(ReviewPipeline.Run(Steady(18, 96).Input).Hours[2].Wet); // 18 - 1 = 17.0 under a dew point of 17.35
        Assert.False(ReviewPipeline.Run(Steady(18, 90).Input).Hours[2].Wet);
    }

    [Fact]
    public void Find_HumidityOver100_CountsAs100()
    {
        ReviewHour hour = ReviewPipeline.Run(Steady(18, 101.5).Input).Hours[12];
        Assert.Equal(100, hour.RelativeHumidityPct);
        Assert.Equal(0, hour.VpdKPa);
        Assert.Equal(0, hour.DewPointMarginK!.Value, 0.0011);
    }

    [Theory]
    [InlineData(6, true)]
    [InlineData(7, false)]
    public void Find_HourWithStepsMissing_NeedsHalf(int missingSteps, bool expected)
    {
        SyntheticHouse house = Steady(18, 90);
        Instant hour = house.Input.Period.Start + Duration.FromHours(30);
        ReviewHour reviewed = ReviewPipeline.Run(house.WithoutRows(hour, hour + Duration.FromMinutes(5 * missingSteps)).Input).Hours[30];
        Assert.Equal(expected, reviewed.Risk is not null);
        Assert.Equal(expected, reviewed.AirTemperatureC is not null);
    }

    [Fact]
    public void Find_MarginSpreadOfTheDraws_AgreesWithFirstOrderError()
    {
        // Uniform half-widths with standard deviations of 0.3 K and 2 %. The margin of one sensor pair at 18 °C, 90 % then
        // varies by 0.349 K (first order; computed table with WMO coefficients, docs/science/risk-hours.md).
        SyntheticHouse house = Steady(18, 90, NoOffsetError);
        house = house.WithHouse(house.Input.House with { Sensors = [] })
            .WithAccuracy("airTemperature", 0.3 * Math.Sqrt(3)).WithAccuracy("relativeHumidity", 2 * Math.Sqrt(3));
        HousePeriod period = UpToLeaves(house);
        BiasDraws draws = BiasDraws.For(period);
        HourTable hours = HourTable.Of(period);
        FoliageHours foliage = new(period, hours);
        double[] noise = new double[hours.Count];
        double[] drawn = [.. Enumerable.Range(0, BiasDraws.Count).Select(d =>
        {
            foliage.UnderErrors(draws.At(d), 0, noise);
            return foliage.MarginK[180];
        })];
        double mean = drawn.Average();
        double deviation = Math.Sqrt(drawn.Sum(m => (m - mean) * (m - mean)) / (drawn.Length - 1));
        double firstOrder = SensorError.OfMargin(new Celsius(18), new RelativeHumidity(90), new KelvinDifference(0.3), new HumidityPoints(2)).Combined;
        Assert.Equal(0.349, firstOrder, 0.002);
        Assert.Equal(firstOrder, deviation, 0.04); // 200 draws: a standard deviation is known to 5 %
    }

    [Fact]
    public void Find_SimulatedWeek_ValueAgreesWithTheMedianOfTheDraws()
    {
        foreach (double drier in (double[])[-1, 0, 1.5, 3])
        {
            SyntheticHouse house = SyntheticHouse.Week("2025-W42").WithAir(t => SyntheticHouse.ChangingAir(t) is Air a ? new Air(a.TemperatureC, a.RelativeHumidityPct - drier) : default);
            HousePeriod period = UpToLeaves(house);
            RiskState risk = RiskHours.Find(period);
            double[] counts = Redraw(period);
            Array.Sort(counts);
            double median = (counts[99] + counts[100]) / 2;
            Assert.InRange(risk.Total!.Value - median, -2, 2); // the hours that are one in half of the draws are not the middle of the draws' counts, but near it
            Assert.InRange(median, 10, 120);
        }
    }

    [Fact]
    public void Find_Range_HoldsTheValueAndWidensWithTheError()
    {
        Estimate exact = ReviewPipeline.Run(Steady(18, 90, NoOffsetError).Input).RiskHours!;
        Assert.InRange(exact.High - exact.Low, 0, 4); // air speed and film are still drawn
        SyntheticHouse rough = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir);
        Estimate wide = ReviewPipeline.Run(rough.Input).RiskHours!;
        Assert.InRange(wide.Value, wide.Low, wide.High);
        Assert.True(wide.High - wide.Low > 7);
    }

    [Theory]
    [InlineData(23, false)]
    [InlineData(24, true)]
    public void Find_FewHoursOfData_CarryNoTotal(int hoursOfData, bool expected)
    {
        SyntheticHouse house = Steady(18, 90);
        Instant start = house.Input.Period.Start;
        Review review = ReviewPipeline.Run(house.WithoutRows(start + Duration.FromHours(hoursOfData), house.Input.Period.End).Input);
        Assert.Equal(hoursOfData, review.Coverage.HoursWithData);
        Assert.Equal(expected, review.RiskHours is not null);
        Assert.Equal(!expected, review.NotKnown.Any(u => u.What == "riskHours"));
    }

    [Theory]
    [InlineData(83, false)]
    [InlineData(84, true)]
    public void Find_WeekBefore_NeedsHalfOfItsHours(int hoursOfData, bool expected)
    {
        SyntheticHouse house = Steady(18, 90);
        Instant start = house.Input.RunIn.Start;
        Review review = ReviewPipeline.Run(house.WithoutRows(start + Duration.FromHours(hoursOfData), house.Input.Period.Start).Input);
        Assert.Equal(expected, review.RiskHoursBefore is not null);
        Assert.NotNull(review.RiskHours);
    }

    [Fact]
    public void Find_WeekBefore_HasTheRiskHoursOfItsOwnPage()
    {
        foreach (string zone in (string[])["Europe/London", "Asia/Kolkata"])
        {
            Review own = ReviewPipeline.Run(SyntheticHouse.Week("2025-W41", zone, runInDays: 9).WithAir(SyntheticHouse.ChangingAir).Input);
            Review next = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42", zone, runInDays: 9).WithAir(SyntheticHouse.ChangingAir).Input);
            Assert.Equal(own.RiskHours, next.RiskHoursBefore);
        }
    }

    [Theory]
    [InlineData("2025-W13", "2025-W14", 167)]
    [InlineData("2025-W43", "2025-W44", 169)]
    public void Find_WeekBeforeWithAClockChange_IsWhole(string week, string next, int hours)
    {
        static Review ReviewOf(string week)
        {
            HouseInput bare = SyntheticHouse.Week(week).Input;
            Interval runIn = new(bare.Period.Start - ReviewPipeline.RunIn, bare.Period.Start);
            return ReviewPipeline.Run(new SyntheticHouse(bare with { RunIn = runIn }, 5).WithAir(at => new Air(18 + (0.2 * Math.Sin(at.ToUnixTimeSeconds())), 97 + Math.Sin(at.ToUnixTimeSeconds()))).Input);
        }

        Assert.Equal(hours, ReviewOf(week).RiskHours!.Value);
        Assert.Equal(hours, ReviewOf(next).RiskHoursBefore!.Value);
    }

    [Fact]
    public void Find_NoRunIn_KnowsNothingOfTheWeekBefore()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42", runInDays: 0).WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Null(review.RiskHoursBefore);
        Assert.Contains(review.NotKnown, u => u.What == "riskHoursBefore");
        Assert.NotNull(review.RiskHours);
    }

    private static HousePeriod UpToLeaves(SyntheticHouse house)
        => LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Alignment.Align(house.Input)))));

    /// <summary>Counts of the period by draw, with the hourly numbers of another seed.</summary>
    private static double[] Redraw(HousePeriod period)
    {
        HourTable hours = HourTable.Of(period);
        FoliageHours foliage = new(period, hours);
        BiasDraws draws = BiasDraws.For(period);
        Random random = new(7);
        return [.. Enumerable.Range(0, BiasDraws.Count).Select(d =>
        {
            foliage.UnderErrors(draws.At(d), draws.HourlyHumidityPct, [.. Enumerable.Range(0, hours.Count).Select(_ => (2 * random.NextDouble()) - 1)]);
            return (double)foliage.Risk[hours.FirstOfPeriod..].Count(r => r);
        })];
    }
}
