using ClimateLens.Analysis.Moisture;
using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;

namespace ClimateLens.Analysis.Tests;

public sealed class HumidityTests
{
    private static readonly SyntheticHouse Warm = SyntheticHouse.Week("2025-W42").WithColumn("climate", "airTemperature", t => 18 + Slow(t));

    [Theory]
    // Worked examples of others: FAO-56 example 4 (bulbs 25.6/19.5 °C at 1200 m give 1.91 kPa, es(25.6) 3.28 kPa: 58 %);
    // es 2.0643 kPa at 18 °C (ASHRAE 2017 table 3): a VPD of 0.2064 is 90 %;
    // MetPy: 25 °C with a dew point of 15 °C is 53.80 %;
    // Nederhoff: 15 g/m³ is 65 % at 25 °C, saturation 23.04 g/m³, so a deficit of 8.04 g/m³.
    [InlineData("wetBulbTemperature", 25.6, 19.5, 1200, 58.2, 0.4)]
    [InlineData("vapourPressureDeficit", 18, 0.20643, 0, 90, 0.05)]
    [InlineData("dewPoint", 25, 15, 0, 53.80, 0.05)]
    [InlineData("humidityDeficit", 25, 8.04, 0, 65, 0.3)]
    public void HumidityFrom_WorkedExample_GivesItsHumidity(string channel, double temperatureC, double measure, double elevationM, double expectedPct, double tolerancePct)
    {
        double[] result = new double[1];
        HumidityFrom.Channel(channel, [temperatureC], [measure], elevationM, result);
        Assert.Equal(expectedPct, result[0], tolerancePct);
    }

    [Theory]
    [InlineData("vapourPressureDeficit", 5)]
    [InlineData("vapourPressureDeficit", double.NaN)]
    [InlineData("wetBulbTemperature", -20)]
    public void HumidityFrom_ImpossibleOrMissing_IsNaN(string channel, double measure)
    {
        double[] result = new double[1];
        HumidityFrom.Channel(channel, [18], [measure], 0, result);
        Assert.True(double.IsNaN(result[0]));
    }

    [Fact]
    public void HumidityFrom_DewPointAboveTemperature_IsSaturated()
    {
        double[] result = new double[1];
        HumidityFrom.Channel("dewPoint", [18], [18.2], 0, result);
        Assert.Equal(100, result[0]);
    }

    [Fact]
    public void Run_NoHumidityButDeficit_DerivesItAndSaysSo()
    {
        Review review = ReviewPipeline.Run(Warm.WithColumn("climate2", "vapourPressureDeficit", t => 0.2 + (0.01 * Slow(t))).Input);
        Assert.NotNull(review.RiskHours);
        Assert.Equal(168, review.Coverage.HoursWithData);
        Assert.InRange(review.Hours[5].RelativeHumidityPct!.Value, 85, 95);
        Assert.Contains(review.Sensors.Single(s => s.Channel == "vapourPressureDeficit").Notes, n => n.Contains("derived", StringComparison.Ordinal));
        Assert.DoesNotContain(review.NotKnown, u => u.What is "riskHours" or "relativeHumidity");
    }

    [Fact]
    public void Run_NoHumidityAtAll_IsNotKnownByNameAndTheRestStands()
    {
        Review review = ReviewPipeline.Run(Warm.Input);
        Assert.Null(review.RiskHours);
        Assert.Null(review.RiskHoursBefore);
        Assert.Contains(review.NotKnown, u => u.What == "relativeHumidity");
        Assert.Contains(review.NotKnown, u => u.What == "riskHours" && u.Why.Contains("humidity", StringComparison.Ordinal));
        Assert.Contains(review.Findings, f => f.Id == "tooLittleData" && f.Text.Contains("No humidity is logged", StringComparison.Ordinal));
        Assert.All(review.Hours, h => Assert.Null(h.Risk));
        Assert.Equal(168, review.Hours.Length);
        Assert.Single(review.Sensors);
    }

    [Fact]
    public void Run_DeficitLoggedInTheWrongUnit_IsFoundByComparison()
    {
        SyntheticHouse house = Warm.WithColumn("climate3", "relativeHumidity", t => 85 + (5 * Slow(t)));
        static double OursKPa(double t, double rh) => 0.61121 * Math.Exp(17.502 * t / (240.97 + t)) * (1 - (rh / 100));
        Review right = ReviewPipeline.Run(house.WithColumn("vpd", "vapourPressureDeficit", t => Math.Round(OursKPa(18 + Slow(t), 85 + (5 * Slow(t))), 2)).Input);
        Review wrong = ReviewPipeline.Run(house.WithColumn("vpd", "vapourPressureDeficit", t => Math.Round(OursKPa(18 + Slow(t), 85 + (5 * Slow(t))) * 10, 2)).Input);
        string note = right.Sensors.Single(s => s.Channel == "vapourPressureDeficit").Notes.Single(n => n.StartsWith("Ours", StringComparison.Ordinal));
        Assert.Contains("0.005 kPa at most", note, StringComparison.Ordinal);
        Assert.DoesNotContain("check the unit", note, StringComparison.Ordinal);
        Assert.DoesNotContain(right.Findings, f => f.Id == "sensorNotTrusted");
        Assert.Contains(wrong.Sensors.Single(s => s.Channel == "vapourPressureDeficit").Notes, n => n.Contains("check the unit", StringComparison.Ordinal));
        Assert.Contains(wrong.Findings, f => f.Id == "sensorNotTrusted");
    }

    [Fact]
    public void Run_AFewImpossibleLoggedDeficits_DoNotSpeakForTheRest()
    {
        SyntheticHouse house = Warm.WithColumn("climate3", "relativeHumidity", t => 85 + (5 * Slow(t)));
        static double OursKPa(double t, double rh) => 0.61121 * Math.Exp(17.502 * t / (240.97 + t)) * (1 - (rh / 100));
        NodaTime.Instant broken = house.Input.Period.Start + NodaTime.Duration.FromHours(30);
        Review review = ReviewPipeline.Run(house.WithColumn("vpd", "vapourPressureDeficit", t => t == broken ? 999 : OursKPa(18 + Slow(t), 85 + (5 * Slow(t)))).Input);
        SensorReport report = review.Sensors.Single(s => s.Channel == "vapourPressureDeficit");
        Assert.Equal(1, report.Flags.Fail);
        Assert.DoesNotContain(report.Notes, n => n.Contains("check the unit", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_DeficitWhoseEveryValueIsImpossible_IsStillCompared()
    {
        SyntheticHouse house = Warm.WithColumn("climate3", "relativeHumidity", t => 85 + (5 * Slow(t)));
        Review review = ReviewPipeline.Run(house.WithColumn("vpd", "vapourPressureDeficit", t => 300 + Slow(t)).Input); // Pa named kPa
        Assert.Contains(review.Sensors.Single(s => s.Channel == "vapourPressureDeficit").Notes, n => n.Contains("check the unit", StringComparison.Ordinal));
    }

    private static double Slow(NodaTime.Instant at) => Math.Sin(at.ToUnixTimeSeconds() / 9000.0);
}
