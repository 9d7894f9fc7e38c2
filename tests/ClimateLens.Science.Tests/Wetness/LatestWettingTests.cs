using ClimateLens.Science.Leaf;
using ClimateLens.Science.Wetness;

namespace ClimateLens.Science.Tests.Wetness;

public sealed class LatestWettingTests
{
    private const int Steps = 120;
    private const double StepSeconds = 300;

    [Fact]
    public void SteadyWeather_TheLatestDriesJustInTime()
    {
        double hours = Drying(18, 70, 0)!.Value;
        int latest = Latest(18, 70, 0);
        Assert.Equal((int)Math.Round(hours * 12), Steps - latest); // five-minute steps from the latest to the end
    }

    /// <summary>
    /// In the dark a wet leaf is some 4.5 K colder than what it sees (wet bulb of 18 °C, 60 %: 13.5 °C) and so gets 2 · 0.95 · 4σT³ · 4.5 = 48 W/m² of heat radiation: the table of a
    /// separate program (drying_time_table, 60 %, 0.1 m/s, net 50 W/m²) says 1.74 h for 0.2 mm.
    /// </summary>
    [Fact]
    public void DarkDrying_IsThatOfTheTable() => Assert.Equal(1.74, Drying(18, 60, 0)!.Value, 0.25);

    [Fact]
    public void MoreSun_AllowsLaterWetting_AndSaturatedAirNone()
    {
        Assert.True(Latest(18, 80, 60) > Latest(18, 80, 0));
        Assert.Equal(-1, Latest(18, 100, 0));
        Assert.Null(Drying(18, 100, 0));
    }

    [Fact]
    public void UnknownWeather_IsNotKnown()
    {
        Assert.Equal(double.NaN, Drying(double.NaN, 70, 0));
        Assert.Equal(-1, Latest(double.NaN, 70, 0));
    }

    private static double? Drying(double airC, double humidityPct, double sunWm2)
        => LatestWetting.DryingHours(Climate(airC, humidityPct, sunWm2), StepSeconds, FilmParameters.PotPlant, WetStates.Default.DryBelowMm);

    private static int Latest(double airC, double humidityPct, double sunWm2)
        => LatestWetting.Of(Climate(airC, humidityPct, sunWm2), StepSeconds, FilmParameters.PotPlant, WetStates.Default.DryBelowMm);

    private static LeafClimate Climate(double airC, double humidityPct, double sunWm2)
        => new(Column(airC), Column(humidityPct), Column(sunWm2), Column(airC), Column(0.1));

    private static double[] Column(double value)
    {
        double[] column = new double[Steps];
        Array.Fill(column, value);
        return column;
    }
}
