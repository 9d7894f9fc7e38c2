using System.Collections.Immutable;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Numbers;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Sensors;
using ClimateLens.Nursery.Time;
using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Statistics;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>What a simulated house logs whose sensors have bias, drift and noise within their accuracies, and no fault.</summary>
public sealed class CleanHouse
{
    private const int StationStepSeconds = 600, StepSeconds = 300;

    private readonly LogTable _inside;
    private readonly LogTable _station;

    private CleanHouse(LogTable inside, LogTable station) => (_inside, _station) = (inside, station);

    /// <summary>The logs of a house over the whole of its run.</summary>
    /// <param name="run">The nursery.</param>
    /// <param name="house">The house.</param>
    /// <param name="columns">Columns that its computer logs; empty: every kind of sensor.</param>
    public static CleanHouse Of(NurseryRun run, HouseRun house, params string[] columns)
    {
        LogTable inside = Inside(run, house);
        return new CleanHouse(
            new LogTable(inside.StampHeader, inside.At, [.. inside.Columns.Where(c => columns.Length == 0 || columns.Contains(c.Channel))]),
            WeatherStation.Read(house.Calendar, run.Weather, run.FirstMinute, run.Seed));
    }

    /// <summary>One week of it, with its run-in and the weeks before.</summary>
    /// <param name="isoWeek">The week.</param>
    /// <param name="historyDays">Days before the week that can be learned from.</param>
    public SyntheticHouse Week(string isoWeek, int historyDays = 0)
    {
        SyntheticHouse bare = SyntheticHouse.Week(isoWeek, GannetRow.Zone.Id, StepSeconds / 60, 8);
        Instant start = bare.Input.Period.Start;
        return bare with
        {
            Input = bare.Input with
            {
                Batches = Batches(bare.Input.RunIn.Start, bare.Input.Period.End),
                History = historyDays == 0 ? [] : Batches(start - Duration.FromDays(historyDays), start),
            },
        };
    }

    private static LogTable Inside(NurseryRun run, HouseRun house)
    {
        HouseLogger logger = new(house, run.FirstMinute, run.Seed);
        SeededRandom random = Seeds.Stream(run.Seed, "second sensors " + house.Options.Id);
        double Within(double accuracy) => accuracy * ((2 * random.NextDouble()) - 1);
        LogColumn air = logger.Air("T"), humidity = logger.Humidity("RH");
        return new LogTable("utc", logger.Stamps(),
        [
            air,
            humidity,
            logger.Read("T2", "airTemperature@B", 1, m => m.AirC, Within(0.5), 0.04, 0.05),
            logger.Read("RH2", "relativeHumidity@B", 1, m => m.HumidityPct, Within(2.5), 0.25, 0.15, 100),
            logger.Read("leaf", "leafTemperature", 1, m => m.LeafC, Within(1), 0.05, 0.1),
            logger.Read("canopy T", "canopyTemperature", 1, m => m.CanopyC, Within(0.5), 0.04, 0.05),
            logger.Read("canopy RH", "canopyHumidity", 1, m => m.CanopyHumidityPct, Within(2.5), 0.25, 0.15, 100),
            logger.Read("CO2", "carbonDioxide", 0, m => m.CarbonDioxidePpm, Within(30), 5, 5),
            logger.Read("pipe", "heatingPipeTemperature", 1, m => m.PipeC, Within(1), 0.1, 0.1),
            logger.Known("set point", "heatingSetPoint", 1, m => m.HeatingSetPointC),
            logger.Known("vent", "ventPosition", 0, m => m.LeePct),
            logger.Known("screen", "screenPosition", 0, m => m.ScreenPct),
            From("dew", "dewPoint", air, humidity, (t, rh) => DewPoint.FromRelativeHumidity(new Celsius(t), new RelativeHumidity(rh)).Value),
            From("vpd", "vapourPressureDeficit", air, humidity, (t, rh) => VapourPressureDeficit.OfAir(new Celsius(t), new RelativeHumidity(rh)).Value),
            logger.Known("radiation", "insideRadiation", 0, _ => 0) with { Values = Light(run, logger.Stamps(), house, 0.55, 0) },
            logger.Known("light", "illuminance", 0, _ => 0) with { Values = Light(run, logger.Stamps(), house, 0.55 * 110, 0) },
            logger.Known("lamps", "illuminance@lamps", 0, _ => 0) with { Values = Light(run, logger.Stamps(), house, 0.55 * 110, 8000) },
        ]);
    }

    /// <summary>Light inside; lamps of that many lux burn from 1 October between 5 and 8 and between 16 and 21 h UTC.</summary>
    private static double[] Light(NurseryRun run, Instant[] stamps, HouseRun house, double share, double lampsLx)
        => [.. stamps.Select(at =>
        {
            int hour = at.InUtc().Hour;
            bool lit = at >= Instant.FromUtc(2025, 10, 1, 0, 0) && hour is (>= 5 and < 8) or (>= 16 and < 21);
            return Math.Round((run.Weather[house.Calendar.MinuteOf(at)].RadiationWm2 * share) + (lit ? lampsLx : 0));
        })];

    private static LogColumn From(string header, string channel, LogColumn air, LogColumn humidity, Func<double, double, double> of)
        => new(header, channel, 2, [.. air.Values.Zip(humidity.Values, of)]);

    private ImmutableArray<ReadingBatch> Batches(Instant from, Instant to)
        => [Batch("1", "climate", StepSeconds, StampSide.Instant, _inside, from, to), Batch(ReadingBatch.WholeNursery, "weather", StationStepSeconds, StampSide.IntervalEnd, _station, from, to)];

    private static ReadingBatch Batch(string house, string source, int stepSeconds, StampSide side, LogTable table, Instant from, Instant to)
    {
        int[] rows = [.. Enumerable.Range(0, table.At.Length).Where(i => table.At[i] >= from && table.At[i] <= to)];
        var columns = table.Columns.ToDictionary(c => c.Channel, c => rows.Select(i => Math.Round(c.Values[i], c.Decimals)).ToArray());
        return new ReadingBatch(house, source, side, stepSeconds, [.. rows.Select(i => table.At[i].ToUnixTimeTicks() / 10)], ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, columns));
    }
}
