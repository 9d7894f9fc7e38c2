using ClimateLens.Nursery.Settings;

namespace ClimateLens.Nursery.Tests.Settings;

public class AccuracyTests
{
    [Theory]
    [InlineData("airTemperature", "1", "", 1)]
    [InlineData("airTemperature", "1", "[degF]", 0.5555556)] // NIST SP 811, B.8: 1 degree Fahrenheit (interval) = 5.555556 E-01 K
    [InlineData("airTemperature", "0.9", "°F", 0.5)]
    [InlineData("dewPoint", "1", "F", 0.5555556)]
    [InlineData("airTemperature", "0.5", "K", 0.5)]
    [InlineData("airTemperature", "0.5", "Cel", 0.5)]
    [InlineData("relativeHumidity", "2", "", 2)]
    [InlineData("relativeHumidity", "0.02", "1", 2)]
    [InlineData("vapourPressureDeficit", "50", "Pa", 0.05)]
    [InlineData("windSpeed", "1", "[mi_i]/h", 0.44704)]
    public void Accuracy_InAUnit_IsKeptInSi(string channel, string accuracy, string unit, double expected)
    {
        string lines = $"[[house.sensor]]\nchannel = \"{channel}\"\naccuracy = {accuracy}\n" + (unit.Length > 0 ? $"unit = \"{unit}\"\n" : "");
        SensorSettings sensor = Assert.Single(NurseryText.Parse(NurseryText.Smallest.With("[[export]]", lines + "[[export]]")).Houses[0].Sensors);
        Assert.Equal(expected, sensor.Accuracy, 7);
    }

    [Theory]
    [InlineData("airTemperature", "25", true)]
    [InlineData("airTemperature", "25.1", false)]
    [InlineData("airTemperature", "-1", false)]
    [InlineData("airTemperature", "nan", false)]
    [InlineData("relativeHumidity", "inf", false)]
    public void Accuracy_BeyondAQuarterOfThePossible_IsRefused(string channel, string accuracy, bool fits)
    {
        string text = NurseryText.Smallest.With("[[export]]", $"[[house.sensor]]\nchannel = \"{channel}\"\naccuracy = {accuracy}\n[[export]]");
        if (fits)
        {
            Assert.Equal(25, NurseryText.Parse(text).Houses[0].Sensors[0].Accuracy);
        }
        else
        {
            Assert.Equal("nursery.range", Assert.Single(NurseryText.ProblemsOf(text)).Code);
        }
    }
}
