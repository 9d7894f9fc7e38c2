using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>The worded parts of a made-up review.</summary>
internal static class SampleParts
{
    public static ImmutableArray<SensorReport> Sensors { get; } =
    [
        new("climate", "airTemperature", "", new FlagCounts(1950, 0, 6, 0, 60), []),
        new("climate", "relativeHumidity", "", new FlagCounts(1880, 0, 70, 6, 60), ["Unchanged for 6.5 hours from Thu 16 Oct 01:20."]),
        new("weather", "outsideTemperature", "", new FlagCounts(1008, 0, 0, 0, 0), []),
        new("climate", "ventPosition", "ridge", new FlagCounts(0, 2016, 0, 0, 0), []),
    ];

    public static SecondOpinionReport SecondOpinion { get; } = new(
        new LocalDateTime(2025, 9, 15, 0, 0).InZoneStrictly(SampleReviews.London).ToOffsetDateTime(),
        London(13, 0, 0),
        [
            new("airTemperature", "", 28, "linearAndTrees", 0.6, 1.6, 1956, 1, [new SuspectStretch(London(14, 14, 0), London(14, 14, 5), 1, 22.4, 18.3)], null),
            new("relativeHumidity", "north <bay>", 26, "linear", 2.1, 6.5, 1956, 0, [], new LastingShift(London(16, 0, 0), London(20, 0, 0), 4, "whole", new Estimate(7.9, 6.8, 8.8), 7.2, 8.1)),
            new("canopyTemperature", "", 28, "linear", 0.4, 1.2, 1956, 0, [], new LastingShift(London(18, 0, 0), London(19, 0, 0), 1, "sunUp", new Estimate(-2.5, -2.9, -2.1), -2.5, -2.5)),
        ],
        [new NotLearned("leafTemperature", "", "Fewer than 21 days before the period have it together with the other sensors.")]);

    public static ImmutableArray<ClockReport> Clocks { get; } =
    [
        new("1", "climate", "exports/house-1-2025-10.csv", true, new ClockCheck(ClockVerdict.Wrong, "insideRadiation", "", 29, "This clock runs 58 minutes ahead since 26 September 2025 (± 18 min, 29 days by radiation inside).", "Take timeZone out under [export.time].")
        {
            SmallestMin = 28,
            Spells = [new ClockSpell(new LocalDate(2025, 9, 20), new LocalDate(2025, 9, 25), 6, -2, 18, false), new ClockSpell(new LocalDate(2025, 9, 26), new LocalDate(2025, 10, 20), 23, 58, 18, true)],
            DriftMinPerWeek = 0.4,
            DriftErrorMinPerWeek = 1.2,
            LitHours = 9.8,
            DaylightHours = 10.6,
        }),
        new("nursery", "weather", "", false, new ClockCheck(ClockVerdict.NotKnown, "", "", 0, "This export has no light to hold its clock against the sun, and no outside temperature.", "")),
    ];

    public static ImmutableArray<ImportedFile> Imports { get; } =
    [
        new("exports/house-1-2025-10.csv", "1", "climate", 8928, 8900, 3, 20, 5, 2, 0, London(1, 0, 0), London(31, 23, 55), new FileFindings(
            [new SetAsideReason("import.fields", SetAsideKind.Row, 1, [17]), new SetAsideReason("import.number", SetAsideKind.Cell, 2, [90, 4711]), new SetAsideReason("import.time", SetAsideKind.Row, 2, [3, 5])],
            300, 0.9987, 2, 6.5, [new FoundGap(London(15, 11, 55), London(15, 17, 0), 5.08), new FoundGap(London(20, 3, 0), London(20, 4, 35), 1.58)],
            [new ChannelSummary("airTemperature", "", 8890, 0.0011, 12.4, 17.8, 26.1), new ChannelSummary("ventPosition", "ridge", 8900, 0, 0, 5, 100), new ChannelSummary("carbonDioxide", "", 0, 1, null, null, null)],
            [new TimeFormatCount("dd-MM-yyyy HH:mm", 8923)], ["Pump <3>", "column 9"], 2, new ImportDialect("windows-1252", ";", "\"", ",", ".", 2),
            Clocks[0].Check)),
        new("exports/weather-2025-10.csv", "nursery", "weather", 4464, 4464, 0, 0, 0, 0, 0, London(1, 0, 10), London(31, 23, 50), null),
    ];

    private static OffsetDateTime London(int day, int hour, int minute)
        => new LocalDateTime(2025, 10, day, hour, minute).InZoneStrictly(SampleReviews.London).ToOffsetDateTime();

    public static CanopyState Canopy(LocalDate first) => new(new Estimate(0.74, 0.66, 0.82), new CanopyClosure(first.PlusDays(24), first.PlusDays(17), first.PlusDays(35)))
    {
        Days = [.. Enumerable.Range(0, 7).Select(i => new CanopyDay(first.PlusDays(i), new Estimate(0.68 + (0.01 * i), 0.6 + (0.01 * i), 0.76 + (0.01 * i))))],
        Widths = [new CanopyWidth(first.PlusDays(-20), 12.1, 0.4), new CanopyWidth(first.PlusDays(-6), 17.25, 0.5)],
        CountedFrom = first.PlusDays(-70),
        Assumption = "",
        Growth = "from memory",
    };

    public static ImmutableArray<Finding> Findings { get; } =
    [
        new("lateOverheadWatering", 1, "3 of 4 overhead waterings ended after the cut-off.", "Finish overhead watering before 14:10, or water at the pot.", "The cut-off assumes 4 hours of drying: common practice, no source.", ["Mon 13 Oct 15:40 to 16:15, cut-off 14:10.", "Wed 15 Oct 16:05 to 16:35, cut-off 14:10.", "Fri 17 Oct 16:20 to 17:00, cut-off 14:10."]),
        new("longHumidNights", 2, "On 5 nights humidity stayed above 90 % for more than 6 hours.", "Vent and heat a little before sunrise.", "Heating costs fuel: try it on one night and compare.", ["Longest: 9 hours from Tue 14 Oct 22:00."]),
        new("sensorInDoubt", 3, "The humidity sensor stood still for 6.5 hours.", "Clean it and compare it with a second one.", "", ["Thu 16 Oct 01:20 to 07:50."]),
        new("gapInData", 4, "5 hours have no readings.", "Look at the logger's power and cable.", "", ["Wed 15 Oct 12:00 to 17:00."]),
    ];

    public static ImmutableArray<Unknown> NotKnown { get; } =
    [
        new("whatIfs.heatAndVentBeforeSunrise", "Vent position is not logged: what more venting would do cannot be told. Its share, if it has one, is among that of the weather."),
        new("wetPeriods", "No wetness sensor, and no film model rules yet."),
    ];

    public static ScoutingReport Scouting => new(
        [.. Enumerable.Range(35, 8).Select(w => new ScoutedWeek(FormattableString.Invariant($"2025-W{w}"), w == 38 ? null : 4 * (w - 33)))],
        [
            new ScoutedSymptom("grey mould", [null, 2, 3, 3, 5, 4, 9, 12], 6, new Estimate(0.83, 0.21, 0.97), 0.06),
            new ScoutedSymptom("mildew <spots>", [null, null, 0, null, null, 1, null, null], 2, null, null),
        ]);

    public static Provenance Provenance(string seedOfHash) => new(
        "ClimateLens 0.1.0",
        20251013,
        200,
        "nursery.toml",
        new string('a', 64),
        Hash(seedOfHash),
        "TZDB: 2025b (mapping: $Revision$)",
        [
            new Threshold("marginK", 1.0, "K", "nursery file"),
            new Threshold("temperatureLowC", 5, "Cel", "common practice, no source"),
            new Threshold("temperatureHighC", 25, "Cel", "common practice, no source"),
            new Threshold("dryingHours", 4, "h", "common practice, no source"),
        ],
        [
            new MethodNote("moistAir", "saturation vapour pressure", "Magnus form with the coefficients of Buck 1981.", "Buck, J. Appl. Meteor. 20, 1981", "under 0.07 % from 10 to 35 °C"),
            new MethodNote("leafTemperature", "leaf temperature", "Air temperature less 1 K at night.", "common practice, no source", "1 K either way"),
        ],
        [
            new SourceFile("exports/house-1-2025-10.csv", new string('b', 64), "climate", 8928, 8900, 3, 20, 5, 2, 0),
            new SourceFile("exports/weather-2025-10.csv", new string('c', 64), "weather", 4464, 4464, 0, 0, 0, 0, 0),
        ]);

    private static string Hash(string text)
        => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(text)));
}
