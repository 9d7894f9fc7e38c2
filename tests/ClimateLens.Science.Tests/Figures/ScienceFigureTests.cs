using ClimateLens.Science.Canopy;
using ClimateLens.Science.Infection;
using ClimateLens.Science.Leaf;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Wetness;
using ClimateLens.TestKit;

namespace ClimateLens.Science.Tests.Figures;

/// <summary>The figures of docs/science are what the functions give today. CLIMATELENS_UPDATE_GOLDEN=1 draws them again.</summary>
public class ScienceFigureTests
{
    [Fact]
    public void CanopyFigure_IsWhatTheCodeGives() => Keep("canopy", new LineChart(
        "How much ground plants hide",
        "Ground cover against plant width over plant distance: triangles close first, then squares; plants without order never quite close.",
        new("plant width over plant distance", 0, 1.6, 0.2), new("ground cover, 1 is closed", 0, 1, 0.2))
        .Add("triangles", 0, 1.6, ratio => GroundCover.Of(PlantSpacing.Triangular(30), 30 * ratio))
        .Add("squares", 0, 1.6, ratio => GroundCover.Of(PlantSpacing.Square(30), 30 * ratio))
        .Add("no order", 0, 1.6, ratio => GroundCover.Of(PlantSpacing.Random(10_000 / 900.0), 30 * ratio)));

    [Fact]
    public void LeafFigure_IsWhatTheCodeGives()
    {
        var chart = new LineChart(
            "A dry leaf at night under a cold cover",
            "Leaf minus air against cover minus air for four air speeds: the colder the cover and the slower the air, the colder the leaf.",
            new("cover or screen minus air, K", -16, 0, 4), new("leaf minus air, K", -4, 0, 1));
        foreach (double speed in new[] { 0.05, 0.1, 0.3, 0.5 })
        {
            chart.Add(FormattableString.Invariant($"{speed} m/s"), -16, 0, colder => LeafBalance.Solve(
                new(new(18), new(60), 0, new(18 + colder), new(18), speed), LeafTraits.PotPlant, new(double.PositiveInfinity)).Offset.Value);
        }

        Keep("leaf", chart);
    }

    [Fact]
    public void WetnessFigure_IsWhatTheCodeGives() => Keep("wetness", new LineChart(
        "How long a film of 0.1 mm on each side lasts at 18 °C",
        "Drying time against humidity: one or two hours in sun, more than twelve in the dark at 90 percent and slow air.",
        new("relative humidity, %", 60, 100, 10), new("hours until dry", 0, 24, 4))
        .Add("dark, 0.05 m/s", 60, 99, humidity => Hours(humidity, 0.05, 0))
        .Add("dark, 0.1 m/s", 60, 99, humidity => Hours(humidity, 0.1, 0))
        .Add("dark, 0.3 m/s", 60, 99, humidity => Hours(humidity, 0.3, 0))
        .Add("net 150 W/m²", 60, 99, humidity => Hours(humidity, 0.1, 150)));

    [Fact]
    public void InfectionFigure_IsWhatTheCodeGives()
    {
        var chart = new LineChart(
            "Grape berries infected in trials [BROOME95]",
            "Share of berries against wet hours at four temperatures: most at 20 degrees; below four hours the model says nothing.",
            new("wet hours", 0, 24, 4), new("share of berries infected", 0, 1, 0.2));
        foreach (double temperature in new[] { 12.0, 16, 20, 28 })
        {
            chart.Add(FormattableString.Invariant($"{temperature} °C"), 4, 24, hours => Broome.Of(new(temperature), hours).BerryShare);
        }

        Keep("infection", chart);
    }

    private static double Hours(double humidity, double speed, double net)
    {
        SecondPerMetre external = StanghelliniResistance.External(new(0.06), new(1), new(speed));
        return FilmDrying.Hours(0.2, new(18), FilmDrying.LatentHeat(new(18), new(humidity), external, new(net)));
    }

    private static void Keep(string name, LineChart chart) => GoldenFile.Check(Repository.PathOf($"docs/science/{name}.svg"), chart.Svg());
}
