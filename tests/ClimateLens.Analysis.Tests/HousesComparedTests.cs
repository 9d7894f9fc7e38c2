using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;

namespace ClimateLens.Analysis.Tests;

public sealed class HousesComparedTests
{
    private static readonly Review House = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input);

    [Fact]
    public void Of_AReviewAndItself_FindsNoDifference()
    {
        ComparisonReport report = HousesCompared.Of(House, House);
        Assert.True(report.SameTime);
        Assert.All(report.Differences, d => Assert.Equal((0.0, "notKnown"), (d.Difference.Value, d.Verdict))); // a range of no width tells nothing
        Assert.Equal(0, report.RiskHours!.Difference);
        Assert.All(report.Nights, n => Assert.Equal(n.FirstRiskHours, n.SecondRiskHours));
    }

    [Theory]
    [InlineData(2.0, "withinSensors")] // two sensors of ±3 % may part by 4.2 %
    [InlineData(8.0, "maybeOffset")] // on nights alike too: an offset of a sensor looks the same
    [InlineData(0.0, "none")]
    public void Of_HumidityThatIsHigher_IsHeldAgainstChanceAndSensors(double points, string verdict)
    {
        MeanDifference found = HousesCompared.Of(Shifted(House, points, wobble: 1), House).Differences.Single(d => d.Name == "relativeHumidityPct");
        Assert.Equal(verdict, found.Verdict);
        Assert.Equal(points, found.Difference.Value, 0.6);
        Assert.Equal(Math.Sqrt(18), found.SensorError!.Value, 0.01);
        Assert.True(found.Difference.Low <= found.Difference.Value && found.Difference.Value <= found.Difference.High);
    }

    [Fact]
    public void Of_HumidityThatIsHigherByDayAlone_IsBeyondBoth_SinceNightsAlikeShowNoOffset()
    {
        Review damper = Shifted(House, 14, wobble: 1);
        damper = damper with { Hours = [.. damper.Hours.Select((h, i) => h.Night ? House.Hours[i] : h)] };
        ComparisonReport report = HousesCompared.Of(damper, House);
        Assert.Equal("beyondSensors", report.Differences.Single(d => d.Name == "relativeHumidityPct").Verdict);
    }

    [Fact]
    public void Of_HoursThatOneSideDoesNotTell_CountForNeither()
    {
        Review riskier = House with { Hours = [.. House.Hours.Select(h => h with { Risk = true })] };
        Review holed = House with { Hours = [.. House.Hours.Select((h, i) => i < 24 ? h with { Risk = null, RelativeHumidityPct = null } : h with { Risk = false })] };
        RiskDifference found = HousesCompared.Of(riskier, holed).RiskHours!;
        Assert.Equal((House.Hours.Length - 24, House.Hours.Length - 24, 0), (found.Hours, found.First, found.Second));
        Assert.Equal(House.Hours.Length - 24, found.Difference);
        Assert.Null(HousesCompared.Of(riskier, holed).Nights[0].FirstRiskHours);
    }

    [Fact]
    public void Of_SensorErrors_AreThoseOfThePublishedTable()
    {
        // VPD at 20 °C and 80 %: es 2.338 kPa (Buck 1981), so 3 % is 0.070 kPa, and 0.5 K of 0.145 kPa/K times 0.2 is 0.014 kPa; two sensors √2 as much.
        Review constant = With(House, h => h with { AirTemperatureC = 20, RelativeHumidityPct = 80, VpdKPa = 0.468 });
        double error = HousesCompared.Of(constant, constant).Differences.Single(d => d.Name == "vpdKPa").SensorError!.Value;
        Assert.Equal(Math.Sqrt(2) * Math.Sqrt((0.0701 * 0.0701) + (0.0145 * 0.0145)), error, 0.001);
    }

    [Fact]
    public void Of_MissingHours_CountOnlyWhereBothAreKnown()
    {
        Review holes = With(House, h => h.Start.Hour < 12 ? h with { RelativeHumidityPct = null } : h);
        ComparisonReport report = HousesCompared.Of(holes, House);
        Assert.Equal(House.Hours.Count(h => h.Start.Hour >= 12 && h.RelativeHumidityPct is not null), report.Hours);
        Assert.All(report.HourlyHumidityPct.Where((_, i) => House.Hours[i].Start.Hour < 12), d => Assert.Null(d));
    }

    [Fact]
    public void Of_NightsAlike_GiveTheOffsetOfTheSensors()
    {
        SensorMatch humidity = HousesCompared.Of(Shifted(House, 3, wobble: 0.2), House).Sensors.Single(s => s.Channel == "relativeHumidity");
        Assert.InRange(humidity.Nights, 6, 8);
        Assert.Equal(3, humidity.Offset!.Value, 0.3);
        Assert.Equal(0, humidity.Corrected!.Value, 0.5);
        Review warmer = With(House, h => h with { AirTemperatureC = h.AirTemperatureC + 2 });
        Assert.All(HousesCompared.Of(warmer, House).Sensors, s => Assert.Null(s.Offset)); // no night is alike
    }

    [Fact]
    public void Of_PeriodsOfOtherLength_AreRefused()
    {
        Review shorter = House with { Hours = [.. House.Hours.Take(24)] };
        Assert.False(HousesCompared.CanBe(House, shorter));
        Assert.Throws<ArgumentException>(() => HousesCompared.Of(House, shorter));
    }

    private static Review Shifted(Review review, double points, double wobble)
    {
        int day = -1;
        return With(review, h =>
        {
            day = h.Start.Date.DayOfYear % 3;
            return h with { RelativeHumidityPct = h.RelativeHumidityPct + points + (wobble * (day - 1)) };
        });
    }

    private static Review With(Review review, Func<ReviewHour, ReviewHour> change) => review with { Hours = [.. review.Hours.Select(change)] };
}
