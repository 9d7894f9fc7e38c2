using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Pots;

/// <summary>A dry, calm house week in October 2025 (Monday is the 13th) with pot checks and records added by a test.</summary>
internal static class CheckedHouse
{
    public static SyntheticHouse Dry { get; } = SyntheticHouse.Week("2025-W42", runInDays: 9)
        .WithAir(t => new Air(20 + (2 * Math.Sin(t.ToUnixTimeSeconds() / 9000.0)), 65 + (6 * Math.Sin(t.ToUnixTimeSeconds() / 7000.0))));

    /// <summary>Adds a check of a pot.</summary>
    public static SyntheticHouse Check(this SyntheticHouse house, int day, int hour, int minute, string bench, string pot, double? level, string grader = "KL", params (string Field, string Text)[] more)
        => house.WithRecord(
            RecordKind.PotChecks,
            new LocalDateTime(2025, 10, 13, hour, minute).PlusDays(day),
            [("bench", bench), ("pot", pot), ("grader", grader), .. level is { } l ? new[] { ("level", FormattableString.Invariant($"{l}")) } : [], .. more]);

    /// <summary>Adds a record at a time of the week.</summary>
    public static SyntheticHouse Record(this SyntheticHouse house, RecordKind kind, int day, int hour, params (string Field, string Text)[] fields)
        => house.WithRecord(kind, new LocalDateTime(2025, 10, 13, hour, 0).PlusDays(day), fields);

    /// <summary>Adds a watering with a method.</summary>
    public static SyntheticHouse Water(this SyntheticHouse house, int day, int hour, string bench, string method = "drip")
        => house.WithWatering(new LocalDateTime(2025, 10, 13, hour, 0).PlusDays(day), ("minutes", "20"), ("method", method), ("bench", bench));

    /// <summary>Sets the house's pots and care.</summary>
    public static SyntheticHouse With(this SyntheticHouse house, PotRules? pots = null, CareRules? care = null)
        => house.WithHouse(house.Input.House with { Pots = pots ?? house.Input.House.Pots, Care = care ?? house.Input.House.Care });

    /// <summary>The review.</summary>
    public static Review Review(this SyntheticHouse house) => ReviewPipeline.Run(house.Input);

    /// <summary>The finding of an id, or null.</summary>
    public static Finding? Finds(this SyntheticHouse house, string id) => house.Review().Findings.SingleOrDefault(f => f.Id == id);
}
