using System.Collections.Immutable;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Air at a moment of a made-up house.</summary>
public readonly record struct Air(double TemperatureC, double RelativeHumidityPct);

/// <summary>
/// Makes the input of a review out of a few functions of time: a house week with the run-in before it, without files or a store.
/// <code>Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input);</code>
/// Every With… gives a new house and leaves the old one as it is.
/// </summary>
public sealed record SyntheticHouse(HouseInput Input, int StepMinutes)
{
    /// <summary>A house week without any readings.</summary>
    public static SyntheticHouse Week(string isoWeek, string zone = "Europe/London", int stepMinutes = 5, int runInDays = 7, double latitude = 53.2, double longitude = -0.6)
    {
        if (!IsoWeek.TryParse(isoWeek, out IsoWeek week))
        {
            throw new ArgumentException($"{isoWeek} is no ISO week.", nameof(isoWeek));
        }

        Interval period = week.In(DateTimeZoneProviders.Tzdb[zone]);
        return Between(period, zone, stepMinutes, runInDays, latitude, longitude);
    }

    /// <summary>A house period without any readings.</summary>
    public static SyntheticHouse Between(Interval period, string zone = "Europe/London", int stepMinutes = 5, int runInDays = 7, double latitude = 53.2, double longitude = -0.6)
    {
        HouseSettings house = new("1", "House 1", 1200, [new CropSettings("cyclamen", new LocalDate(2025, 8, 4), null, null, 13, [])], [], new RiskRules());
        NurserySettings nursery = new("nursery.toml", "Gannet Row", DateTimeZoneProviders.Tzdb[zone], latitude, longitude, 18, UnitSystem.Metric, "store", "site", [house], [], new string('0', 64)) { Invented = true };
        Interval runIn = new(period.Start - Duration.FromDays(runInDays), period.Start);
        return new SyntheticHouse(new HouseInput(nursery, house, period, runIn, [], [], []), stepMinutes);
    }

    /// <summary>A plain autumn house: 18 °C and 75 % by day, 15 °C and 93 % before dawn, smooth in between.</summary>
    public static Air AutumnAir(Instant at)
    {
        double hour = at.InUtc().TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour;
        double day = 0.5 - (0.5 * Math.Cos((hour - 3) * Math.PI / 12));
        return new Air(15 + (3 * day), 93 - (18 * day));
    }

    /// <summary>As <see cref="AutumnAir"/>, with every day up to 6 points damper or drier and up to 3 K warmer or colder than the next.</summary>
    public static Air ChangingAir(Instant at)
    {
        double days = at.ToUnixTimeSeconds() / 86400.0;
        Air air = AutumnAir(at);
        return new Air(air.TemperatureC + (3 * Math.Sin(days * 1.7)), Math.Min(100, air.RelativeHumidityPct + (6 * Math.Sin(days * 2.4)) - (2 * Math.Cos(days * 11.3))));
    }

    /// <summary>Adds temperature and humidity from the start of the run-in to the end of the period.</summary>
    public SyntheticHouse WithAir(Func<Instant, Air> air, string source = "climate")
        => WithSource(source, StepMinutes, [("airTemperature", t => air(t).TemperatureC), ("relativeHumidity", t => air(t).RelativeHumidityPct)]);

    /// <summary>Adds one column as a source of its own.</summary>
    public SyntheticHouse WithColumn(string source, string column, Func<Instant, double> value, int? stepMinutes = null, StampSide side = StampSide.Instant, string? house = null)
        => WithSource(source, stepMinutes ?? StepMinutes, [(column, value)], side, house);

    /// <summary>Adds a source with a row at every step of run-in and period.</summary>
    public SyntheticHouse WithSource(string source, int stepMinutes, (string Column, Func<Instant, double> Value)[] columns, StampSide side = StampSide.Instant, string? house = null)
    {
        List<long> stamps = [];
        for (Instant at = Input.RunIn.Start; at < Input.Period.End; at += Duration.FromMinutes(stepMinutes))
        {
            stamps.Add(at.ToUnixTimeTicks() / 10);
        }

        long[] utcMicros = [.. stamps];
        double[] Values(Func<Instant, double> value) => [.. utcMicros.Select(m => value(Instant.FromUnixTimeTicks(m * 10)))];
        var byName = columns.ToImmutableSortedDictionary(c => c.Column, c => Values(c.Value), StringComparer.Ordinal);
        return WithBatch(new ReadingBatch(house ?? Input.House.Id, source, side, stepMinutes * 60, utcMicros, byName));
    }

    /// <summary>Adds a batch as it is.</summary>
    public SyntheticHouse WithBatch(ReadingBatch batch) => this with { Input = Input with { Batches = Input.Batches.Add(batch) } };

    /// <summary>Lets the check that learns see all rows before the period, as they stand now.</summary>
    public SyntheticHouse WithHistory()
    {
        long start = Input.Period.Start.ToUnixTimeTicks() / 10;
        return this with { Input = Input with { History = [.. Input.Batches.Select(b => Keep(b, m => m < start))] } };
    }

    /// <summary>Drops the rows of every source that lie in a stretch of time.</summary>
    public SyntheticHouse WithoutRows(Instant from, Instant to)
        => this with { Input = Input with { Batches = [.. Input.Batches.Select(b => Keep(b, m => Instant.FromUnixTimeTicks(m * 10) is Instant at && (at < from || at >= to)))] } };

    /// <summary>Adds a record of a watering.</summary>
    public SyntheticHouse WithWatering(LocalDateTime start, params (string Field, string Text)[] fields)
        => WithRecord(RecordKind.Waterings, start, fields);

    /// <summary>Adds a record.</summary>
    public SyntheticHouse WithRecord(RecordKind kind, LocalDateTime start, params (string Field, string Text)[] fields)
    {
        Instant at = start.InZoneStrictly(Input.Nursery.Zone).ToInstant();
        var byName = fields.ToImmutableSortedDictionary(f => f.Field, f => f.Text, StringComparer.Ordinal);
        RecordRow row = new(kind, Input.House.Id, "log", at, "exports/log.csv", Input.Records.Length + 2, byName);
        return this with { Input = Input with { Records = [.. Input.Records.Add(row).OrderBy(r => r.At)] } };
    }

    /// <summary>Sets the rules.</summary>
    public SyntheticHouse WithRules(RiskRules rules) => WithHouse(Input.House with { Rules = rules });

    /// <summary>States a sensor's accuracy.</summary>
    public SyntheticHouse WithAccuracy(string channel, double halfWidth, string sensor = "", string source = "data sheet")
        => WithHouse(Input.House with { Sensors = Input.House.Sensors.Add(new SensorSettings(channel, sensor, halfWidth, source)) });

    /// <summary>Sets the house.</summary>
    public SyntheticHouse WithHouse(HouseSettings house)
        => this with { Input = Input with { House = house, Nursery = Input.Nursery with { Houses = [house] } } };

    /// <summary>Names the export of readings that a column comes from, for valves.</summary>
    public SyntheticHouse WithExport(string source, params ColumnSettings[] columns)
        => this with { Input = Input with { Nursery = Input.Nursery with { Exports = Input.Nursery.Exports.Add(Export(source, null, columns)) } } };

    /// <summary>Names a log of waterings, whether or not it has rows.</summary>
    public SyntheticHouse WithWateringLog()
        => this with { Input = Input with { Nursery = Input.Nursery with { Exports = Input.Nursery.Exports.Add(Export("log", RecordKind.Waterings, [])) } } };

    private ExportSettings Export(string name, RecordKind? kind, ColumnSettings[] columns)
    {
        DialectSettings dialect = new("utf-8", ',', '"', '.', null, null, 1, 2, []);
        TimeSettings time = new(new FieldRef("time", null), null, "iso", Input.Nursery.Zone);
        return new ExportSettings(name, Input.House.Id, kind, [$"exports/{name}.csv"], dialect, time, [.. columns], StepMinutes * 60, StampSide.Instant, 1);
    }

    private static ReadingBatch Keep(ReadingBatch batch, Func<long, bool> keep)
    {
        int[] rows = [.. Enumerable.Range(0, batch.UtcMicros.Length).Where(i => keep(batch.UtcMicros[i]))];
        return batch with
        {
            UtcMicros = [.. rows.Select(i => batch.UtcMicros[i])],
            Columns = batch.Columns.ToImmutableSortedDictionary(c => c.Key, c => rows.Select(i => c.Value[i]).ToArray(), StringComparer.Ordinal),
        };
    }
}
