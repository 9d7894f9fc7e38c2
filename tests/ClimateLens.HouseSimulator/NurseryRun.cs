using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Weather;

namespace ClimateLens.HouseSimulator;

/// <summary>Both houses of the invented nursery under one weather.</summary>
/// <param name="Seed">Seed of everything.</param>
/// <param name="Weather">Weather of each minute.</param>
/// <param name="HouseOne">Overhead boom.</param>
/// <param name="HouseTwo">Drip.</param>
/// <param name="FirstMinute">Minute of the first reading; those before it are for settling in.</param>
public sealed record NurseryRun(ulong Seed, WeatherPoint[] Weather, HouseRun HouseOne, HouseRun HouseTwo, int FirstMinute)
{
    public IReadOnlyList<HouseRun> Houses => [HouseOne, HouseTwo];

    /// <summary>Simulates the nursery.</summary>
    public static NurseryRun Of(ulong seed) => Of(seed, _ => HouseNature.Usual);

    /// <summary>Simulates the nursery with houses of other natures.</summary>
    /// <param name="seed">Seed of everything.</param>
    /// <param name="natureOf">The nature of a house by its id.</param>
    public static NurseryRun Of(ulong seed, Func<string, HouseNature> natureOf)
    {
        WeatherPoint[] weather = WeatherMaker.Make(GannetRow.Calendar, seed);
        return new NurseryRun(
            seed,
            weather,
            HouseSimulation.Run(GannetRow.HouseOne with { Nature = natureOf(GannetRow.HouseOne.Id) }, GannetRow.Calendar, weather, seed),
            HouseSimulation.Run(GannetRow.HouseTwo with { Nature = natureOf(GannetRow.HouseTwo.Id) }, GannetRow.Calendar, weather, seed),
            GannetRow.Calendar.MinuteOf(GannetRow.Zone.AtStartOfDay(GannetRow.FirstDay).ToInstant()));
    }
}
