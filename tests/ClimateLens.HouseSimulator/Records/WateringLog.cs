using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Watering;

namespace ClimateLens.HouseSimulator.Records;

/// <summary>The watering log of House 1, as its boom writes it; hose runs are added by hand.</summary>
public static class WateringLog
{
    public static string Write(NurseryRun run)
    {
        var csv = new CsvText("start", "end", "method", "litres", "bench", "note");
        HouseRun house = run.HouseOne;
        foreach (WateringEvent watering in house.Waterings.Where(w => w.StartMinute >= run.FirstMinute))
        {
            csv.Row(
                CsvText.Time(house.Calendar.Local(watering.StartMinute)),
                CsvText.Time(house.Calendar.Local(watering.EndMinute)),
                watering.Method,
                CsvText.Number(Litres(watering, GannetRow.HouseOneAreaM2), "0"),
                watering.Bench,
                watering.Note);
        }

        return csv.ToString();
    }

    /// <summary>Water of an event over the whole bench, to ten litres. [L]</summary>
    public static double Litres(WateringEvent watering, double houseAreaM2)
        => Math.Round(watering.LitresPerM2 * watering.Share * houseAreaM2 / 10) * 10;
}
