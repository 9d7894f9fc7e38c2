using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Sensors;
using NodaTime;

namespace ClimateLens.HouseSimulator.Output;

/// <summary>Writes the exports, one file a month and source.</summary>
public static class ExportWriter
{
    private static readonly Dialect One = new(';', ',', "dd'-'MM'-'uuuu HH':'mm", false, ["Gannet Row;House 1;5 min"]);
    private static readonly Dialect Two = new(',', '.', "uuuu'-'MM'-'dd HH':'mm':'ss", false, []);
    private static readonly Dialect Station = new(',', '.', "uuuu'-'MM'-'dd'T'HH':'mm':'ss'Z'", true, []);

    public static void Write(FileSet files, NurseryRun run)
    {
        LogTable one = HouseOne(new HouseLogger(run.HouseOne, run.FirstMinute, run.Seed));
        LogTable two = HouseTwo(new HouseLogger(run.HouseTwo, run.FirstMinute, run.Seed));
        foreach (Defect defect in PlantedDefects.All)
        {
            defect.Apply(defect.Source == "house-1" ? one : two, GannetRow.Zone);
        }

        Months(files, PlantedDefects.HouseOneFiles, one, One, Duration.Zero);
        Months(files, PlantedDefects.HouseTwoFiles, two, Two, Duration.Zero);
        files.Copy(PlantedDefects.Original, PlantedDefects.Duplicate);
        LogTable weather = WeatherStation.Read(run.HouseOne.Calendar, run.Weather, run.FirstMinute, run.Seed);
        Months(files, "exports/weather-", weather, Station, Duration.FromMinutes(10));
    }

    private static LogTable HouseOne(HouseLogger log) => new("Time", log.Stamps(),
    [
        log.Air("Air temp"),
        log.Humidity("RH"),
        log.Read("CO2", "carbonDioxide", 0, m => m.CarbonDioxidePpm, 15, 6, 4),
        log.Known("Vent lee", "ventPosition@lee", 0, m => m.LeePct),
        log.Known("Vent wind", "ventPosition@wind", 0, m => m.WindPct),
        log.Known("Screen", "screenPosition", 0, m => m.ScreenPct),
        log.Read("Pipe", "heatingPipeTemperature", 1, m => m.PipeC, 0.4, 0.1, 0.1),
        log.Known("Heat set", "heatingSetPoint", 1, m => m.HeatingSetPointC),
    ]);

    private static LogTable HouseTwo(HouseLogger log) => new("timestamp", log.Stamps(),
    [
        log.Air("air_temp"),
        log.Humidity("air_rh"),
        log.Read("canopy_temp", "canopyTemperature", 1, m => m.CanopyC, 0.1, 0.05, 0.06),
        log.Read("canopy_rh", "canopyHumidity", 1, m => m.CanopyHumidityPct, 0.5, 0.3, 0.2, 100),
        log.Known("vents", "ventPosition", 0, m => m.LeePct),
        log.Known("screen", "screenPosition", 0, m => m.ScreenPct),
        log.Read("pipe_temp", "heatingPipeTemperature", 1, m => m.PipeC, -0.2, 0.1, 0.1),
        log.Valve("valve_a", "A"),
        log.Valve("valve_b", "B"),
    ]);

    // A row belongs to the month in which its interval starts, by local time.
    private static void Months(FileSet files, string prefix, LogTable table, Dialect dialect, Duration length)
    {
        var months = table.At.Select(at => Month(at - length)).ToArray();
        foreach (YearMonth month in months.Distinct())
        {
            string text = dialect.Write(table, GannetRow.Zone, row => months[row] == month);
            files.Add(FormattableString.Invariant($"{prefix}{month.Year:0000}-{month.Month:00}.csv"), text);
        }
    }

    private static YearMonth Month(Instant at) => at.InZone(GannetRow.Zone).Date.ToYearMonth();
}
