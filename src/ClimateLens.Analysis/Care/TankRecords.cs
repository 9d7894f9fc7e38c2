using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Analysis.Care;

/// <summary>Readings of tanks against the limits of the nursery file, and the waterings that ran while one was out of them or too old.</summary>
/// <remarks><b>Rule:</b> a reading stands for its tank until the next one, or for the hours that the nursery file gives; a reading in another unit is not judged. Fog is left out.</remarks>
internal static class TankRecords
{
    /// <summary>Each limit with its readings in the period.</summary>
    public static ImmutableArray<TankEntry> Of(HousePeriod house) => [.. house.Input.House.Care.Tanks.Select(limit => Entry(house, limit))];

    private static TankEntry Entry(HousePeriod house, TankLimit limit)
    {
        HouseInput input = house.Input;
        (Instant At, double Reading)[] readings = [.. Readings(input, limit)];
        Duration stands = Duration.FromHours(input.House.Care.TankHours);
        ImmutableArray<TankWatering> waterings =
        [
            .. house.Events
                .Where(e => input.Period.Contains(e.Start) && e.Method != WateringMethod.Fog)
                .Select(e => Judge(e, input, limit, readings, stands))
                .OfType<TankWatering>(),
        ];
        (Instant At, double Reading)[] own = [.. readings.Where(r => input.Period.Contains(r.At))];
        return new(limit.What, limit.Tank, limit.Low, limit.High, limit.Unit, own.Length, own.Count(r => !limit.Holds(r.Reading)), waterings);
    }

    private static TankWatering? Judge(WateringEvent watering, HouseInput input, TankLimit limit, (Instant At, double Reading)[] readings, Duration stands)
    {
        (Instant At, double Reading) last = readings.LastOrDefault(r => r.At <= watering.Start);
        bool known = last.At != default && watering.Start - last.At <= stands;
        return known && limit.Holds(last.Reading)
            ? null
            : new(watering.Start.InZone(input.Nursery.Zone).ToOffsetDateTime(), watering.Bench, watering.Method, known ? last.Reading : null);
    }

    private static IEnumerable<(Instant At, double Reading)> Readings(HouseInput input, TankLimit limit) => input.Records
        .Where(r => r.Kind == RecordKind.Tanks && r.At < input.Period.End && Same(r.Text("what"), limit.What)
            && (limit.Tank.Length == 0 || Same(r.Text("tank"), limit.Tank)) && (limit.Unit.Length == 0 || Same(r.Text("readingUnit"), limit.Unit)))
        .Select(r => (r.At, Reading: r.Number("reading")))
        .Where(r => r.Reading is not null)
        .Select(r => (r.At, r.Reading!.Value));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
