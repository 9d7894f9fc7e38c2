using System.Collections.Immutable;
using ClimateLens.Analysis;
using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Output;
using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.HouseSimulator.Sensors;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.TestKit.Simulated;

/// <summary>
/// One week of a simulated house as a grower would have it: main sensors with bias, drift and noise, the weather outside, screen, waterings, plant widths
/// and spacing; on request a sensor in the canopy. The simulator's own equations of leaf, film and canopy know nothing of the product's.
/// </summary>
public static class SimulatedWeek
{
    /// <summary>Makes the input of a review.</summary>
    /// <param name="run">The nursery.</param>
    /// <param name="house">The house; its options say what its sensors read too high.</param>
    /// <param name="isoWeek">The week, 2025-W37 to 2025-W45.</param>
    /// <param name="canopySensor">Biases of a sensor in the canopy; null for none.</param>
    /// <param name="historyDays">How far back the readings before the week reach, with the vents; 0 for none. [d]</param>
    public static HouseInput Of(NurseryRun run, HouseRun house, string isoWeek, (double TemperatureK, double HumidityPct)? canopySensor, int historyDays = 0)
    {
        HouseLogger logger = new(house, run.FirstMinute, run.Seed);
        List<LogColumn> columns =
        [
            logger.Air("T"),
            logger.Humidity("RH"),
            logger.Known("screen", "screenPosition", 0, m => m.ScreenPct),
        ];
        if (canopySensor is { } bias)
        {
            columns.Add(logger.Read("canopy T", "canopyTemperature", 1, m => m.CanopyC, bias.TemperatureK, 0.04, 0.05));
            columns.Add(logger.Read("canopy RH", "canopyHumidity", 1, m => m.CanopyHumidityPct, bias.HumidityPct, 0.25, 0.15, 100));
        }

        if (historyDays > 0)
        {
            columns.Add(logger.Known("lee", "ventPosition@lee", 0, m => m.LeePct));
            columns.Add(logger.Known("wind", "ventPosition@wind", 0, m => m.WindPct));
        }

        SyntheticHouse bare = SyntheticHouse.Week(isoWeek, GannetRow.Zone.Id, 5, 9);
        LocalDate potted = new(2025, 8, 4);
        ImmutableArray<SpacingStep> spacing = [.. house.Options.Crop.Steps.Select(s => new SpacingStep(s.From, "square", 100 * s.DistanceM, null))];
        bare = bare.WithHouse(bare.Input.House with { Crops = [new CropSettings("cyclamen", potted, null, null, 13, spacing)] }).WithWateringLog();
        LogTable climate = new("utc", logger.Stamps(), columns), station = WeatherStation.Read(house.Calendar, run.Weather, run.FirstMinute, run.Seed);
        Interval period = bare.Input.Period, runIn = new(period.Start - ReviewPipeline.RunIn, period.Start);
        Instant past = period.Start - Duration.FromDays(historyDays);
        return bare.Input with
        {
            RunIn = runIn,
            Batches = Batches(climate, station, runIn.Start, period.End),
            History = historyDays == 0 ? [] : Batches(climate, station, past, period.Start),
            EarlierWaterings = past < runIn.Start ? [.. Waterings(house, past, runIn.Start)] : [],
            Records = [.. Waterings(house, runIn.Start, period.End), .. Widths(bare.Input, house)],
        };
    }

    private static ImmutableArray<ReadingBatch> Batches(LogTable climate, LogTable station, Instant from, Instant to)
        => [Batch("climate", 300, StampSide.Instant, climate, "1", from, to), Batch("weather", 600, StampSide.IntervalEnd, station, ReadingBatch.WholeNursery, from, to)];

    private static IEnumerable<RecordRow> Waterings(HouseRun house, Instant from, Instant to)
        => house.Waterings
            .Select(w => (At: house.Calendar.At(w.StartMinute), Minutes: w.EndMinute - w.StartMinute, w.Method))
            .Where(w => w.At >= from && w.At < to)
            .Select((w, i) => Row(RecordKind.Waterings, w.At, i, ("method", w.Method), ("minutes", System.FormattableString.Invariant($"{w.Minutes}"))));

    /// <summary>Five plants every Monday from the third week on, each 6 % wider or narrower than the mean.</summary>
    private static IEnumerable<RecordRow> Widths(HouseInput input, HouseRun house)
    {
        for (LocalDate day = new(2025, 8, 25); day.AtStartOfDayInZone(GannetRow.Zone).ToInstant() < input.Period.End; day = day.PlusDays(7))
        {
            Instant at = day.At(new LocalTime(10, 0)).InZoneLeniently(GannetRow.Zone).ToInstant();
            for (int plant = -2; plant <= 2; plant++)
            {
                double widthMm = 1000 * house.Options.Crop.WidthM(day.At(new LocalTime(10, 0))) * (1 + (0.04 * plant));
                yield return Row(RecordKind.PlantWidths, at, plant + 2, ("plant", System.FormattableString.Invariant($"{plant + 3}")), ("width", System.FormattableString.Invariant($"{widthMm:0}")));
            }
        }
    }

    private static RecordRow Row(RecordKind kind, Instant at, int number, params (string Field, string Text)[] fields)
        => new(kind, "1", "log", at, "exports/log.csv", number + 2, fields.ToImmutableSortedDictionary(f => f.Field, f => f.Text, StringComparer.Ordinal));

    private static ReadingBatch Batch(string source, int stepSeconds, StampSide side, LogTable table, string house, Instant from, Instant to)
    {
        int[] rows = [.. Enumerable.Range(0, table.At.Length).Where(i => table.At[i] >= from && table.At[i] <= to)];
        var columns = table.Columns.ToDictionary(c => c.Channel, c => rows.Select(i => Math.Round(c.Values[i], c.Decimals)).ToArray());
        return new ReadingBatch(house, source, side, stepSeconds, [.. rows.Select(i => table.At[i].ToUnixTimeTicks() / 10)], ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, columns));
    }
}
