using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Science.Pots;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Pots that went dry, worst first, and what followed within a day.</summary>
/// <remarks>
/// <b>Rule:</b> level 1, or leaves that hang or are limp; the worst check of a pot and day stands for it. It was saturated after where the same pot, or else its bench, is seen at
/// <see cref="RootWeather.SaturatedLevel"/> or above within a day. That this opens roots to disease is common practice, and [PNW] for dried and flooded roots.
/// </remarks>
internal static class DryDowns
{
    private static readonly Duration Following = Duration.FromHours(24);

    /// <summary>The dry-downs of the period.</summary>
    public static ImmutableArray<DryDown> Of(PotData data) =>
    [
        .. data.Own
            .Where(c => c.IsDryDown)
            .GroupBy(c => (c.Bench, c.Pot, Day: data.DayOf(c.At)))
            .Select(same => same.OrderByDescending(c => c.Leaves).ThenBy(c => c.Moisture ?? 1).First())
            .OrderByDescending(c => c.Leaves).ThenBy(c => c.Moisture ?? 1).ThenBy(c => c.At).ThenBy(c => c.Bench, StringComparer.Ordinal).ThenBy(c => c.Pot, StringComparer.Ordinal)
            .Select(c => Entry(data, c)),
    ];

    private static DryDown Entry(PotData data, PotCheck check)
    {
        Instant until = check.At + Following;
        PotCheck[] after = [.. data.All.Where(c => c.Bench == check.Bench && c.At > check.At && c.At <= until && c.Moisture is not null)];
        PotCheck[] same = [.. after.Where(c => c.Pot.Length > 0 && c.Pot == check.Pot)];
        PotCheck[] seen = same.Length > 0 ? same : after;
        Instant? watered = data.Waterings.Of(check.Bench, check.At, until).Select(w => (Instant?)w.Start).FirstOrDefault(start => start >= check.At);
        return new(
            check.At.InZone(data.Zone).ToOffsetDateTime(),
            check.Bench,
            check.Pot,
            check.Moisture,
            check.Leaves,
            watered is Instant start ? (start - check.At).TotalHours : null,
            seen.Length == 0 ? null : seen.Any(c => c.Moisture >= RootWeather.SaturatedLevel));
    }
}
