using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Watering;
using ClimateLens.HouseSimulator.Weather;
using ClimateLens.Science.Statistics;

namespace ClimateLens.HouseSimulator;

/// <summary>Runs a house through a calendar, minute by minute.</summary>
public static class HouseSimulation
{
    private const int DecisionMinute = 240;

    /// <param name="options">The house.</param>
    /// <param name="calendar">Which minutes.</param>
    /// <param name="weather">Weather of each minute of the calendar and one more.</param>
    /// <param name="seed">Seed of the pots and of the watering habit. Same seed, same truth.</param>
    public static HouseRun Run(HouseOptions options, SimCalendar calendar, WeatherPoint[] weather, ulong seed)
    {
        var house = new HouseModel(options, seed, calendar.Local(0));
        SeededRandom random = Seeds.Stream(seed, "watering " + options.Id);
        var minutes = new HouseMinute[calendar.Minutes + 1];
        List<WateringEvent> waterings = [], running = [];
        List<double[]> pots = [];
        minutes[0] = house.State();
        for (int minute = 0; minute < calendar.Minutes; minute++)
        {
            int clock = calendar.LocalMinuteOfDay(minute);
            if (clock == DecisionMinute)
            {
                house.SetCrop(calendar.Local(minute));
                waterings.AddRange(Decide(options, calendar, minute, house, random).Where(e => !waterings.Contains(e)).ToList());
            }

            if (minute % 60 == 0)
            {
                house.SetCrop(calendar.Local(minute));
                pots.Add([.. house.Pots.WaterMl]);
            }

            house.Step(clock, weather[minute], Running(waterings, minute, running));
            minutes[minute + 1] = house.State();
        }

        return new HouseRun(options, calendar, minutes, waterings, pots, house.Book, house.WaterStored, house.HeatStored);
    }

    private static IEnumerable<WateringEvent> Decide(
        HouseOptions options, SimCalendar calendar, int minute, HouseModel house, SeededRandom random)
        => options.Watering
            .Decide(calendar.Local(minute).Date, minute - DecisionMinute, house.Pots, house.Crop.DensityPerM2, random)
            .OrderBy(e => e.StartMinute);

    private static List<WateringEvent> Running(List<WateringEvent> waterings, int minute, List<WateringEvent> running)
    {
        running.Clear();
        foreach (WateringEvent watering in waterings)
        {
            if (minute >= watering.StartMinute && minute < watering.EndMinute)
            {
                running.Add(watering);
            }
        }

        return running;
    }
}
