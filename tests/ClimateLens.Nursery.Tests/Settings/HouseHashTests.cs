using System.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>Which change of a nursery file bears on which house.</summary>
public class HouseHashTests
{
    private static readonly string File = $$"""
        [nursery]
        name = "Small"
        timeZone = "Europe/London"
        latitude = 53.2
        longitude = -0.6
        elevationM = 18

        [[house]]
        id = "1"
        name = "House 1"
        areaM2 = 400

        [[house]]
        id = "2"
        name = "House 2"
          [house.rules]
          marginK = 1.0

        {{Climate("one", "1")}}

        {{Climate("two", "2")}}

        [[export]]
        name = "pot-checks"
        kind = "potChecks"
        files = ["checks.csv"]
          [export.time]
          field = "Time"
          format = "yyyy-MM-dd HH:mm"
          [[export.column]]
          field = "House"
          channel = "house"
          [[export.column]]
          field = "Level"
          channel = "level"
        """;

    [Theory]
    [InlineData("areaM2 = 400", "areaM2 = 400 # measured", "")]
    [InlineData("areaM2 = 400", "areaM2 = 400.0", "")] // the same number
    [InlineData("id = \"1\"\nname = \"House 1\"", "name = \"House 1\"\n# between\nid = \"1\"", "")] // another order
    [InlineData("[[house]]\nid = \"2\"", "\n\n[[house]]\nid = \"2\"", "")]
    [InlineData("areaM2 = 400", "areaM2 = 401", "1")]
    [InlineData("marginK = 1.0", "marginK = 1.5", "2")]
    [InlineData("two.csv", "second.csv", "2")]
    [InlineData("name = \"one\"", "name = \"first\"", "1")]
    [InlineData("checks.csv", "pots.csv", "12")] // names its house in each row
    [InlineData("elevationM = 18", "elevationM = 19", "12")]
    [InlineData("name = \"Small\"", "name = \"Smaller\"", "12")]
    [InlineData("[[export]]\nname = \"two\"", "[[house]]\nid = \"3\"\nname = \"House 3\"\n\n[[export]]\nname = \"two\"", "")] // a third house
    public void Of_AChange_IsAnotherHashForTheHousesItBearsOn(string old, string replaced, string houses)
    {
        Assert.Contains(old, File, StringComparison.Ordinal);
        NurserySettings before = Parse(File), after = Parse(File.Replace(old, replaced, StringComparison.Ordinal));
        Assert.NotEqual(before.ContentHash, after.ContentHash);
        Assert.Equal(houses, string.Concat(before.HouseHashes.Keys.Order(StringComparer.Ordinal).Where(id => before.HouseHashes[id] != after.HouseHashes[id])));
    }

    [Fact]
    public void Of_TwoHouses_AreTwoHashes() => Assert.Equal(2, Parse(File).HouseHashes.Values.Distinct().Count());

    private static string Climate(string name, string house) => $"""
        [[export]]
        name = "{name}"
        house = "{house}"
        files = ["{name}.csv"]
          [export.time]
          field = "Time"
          format = "yyyy-MM-dd HH:mm"
          [[export.column]]
          field = "Air"
          channel = "airTemperature"
          unit = "Cel"
        """;

    private static NurserySettings Parse(string text) => NurseryFile.Parse("nursery.toml", Encoding.UTF8.GetBytes(text));
}
