using System.Globalization;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Health;

/// <summary>Houses and loggers that have sent nothing for days.</summary>
internal static class Freshness
{
    public static IEnumerable<CheckupLine> Of(NurserySettings nursery, Ledger ledger, Machine machine, int staleDays)
    {
        ILookup<string, SourceEnd> sources = Sources(ledger).ToLookup(s => s.House, StringComparer.Ordinal);
        var expected = nursery.Exports.Where(e => e.Kind is null).Select(e => e.House).ToHashSet(StringComparer.Ordinal);
        foreach (string id in nursery.Houses.Select(h => h.Id).Concat(expected.Where(h => h == ReadingBatch.WholeNursery)))
        {
            string name = NameOf(nursery, id);
            SourceEnd[] ends = [.. sources[id].Where(s => nursery.Exports.Any(e => e.Kind is null && e.House == id && e.Name == s.Name))];
            if (ends.Length == 0)
            {
                yield return CheckupLine.Look("data.none", $"{name} has no readings in the store.", expected.Contains(id)
                    ? "Look whether its exports arrive where the nursery file says."
                    : "Add an [[export]] table for it to the nursery file, or take the house out.");
                continue;
            }

            foreach (CheckupLine line in OfHouse(nursery, name, ends, machine, staleDays))
            {
                yield return line;
            }
        }
    }

    /// <summary>The sources of readings with their last stamp.</summary>
    public static IEnumerable<SourceEnd> Sources(Ledger ledger) => ledger.Sources
        .Where(s => s.Kind is null && s.Parts.Count > 0)
        .Select(s => new SourceEnd(s.House, s.Source, Micros.ToInstant(s.Parts.Max(p => p.Last))));

    /// <summary>A house's name.</summary>
    public static string NameOf(NurserySettings nursery, string id) => nursery.Houses.FirstOrDefault(h => h.Id == id)?.Name ?? "The whole nursery";

    /// <summary>A time as people of the nursery read it.</summary>
    public static string Local(Instant time, NurserySettings nursery) => time.InZone(nursery.Zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static IEnumerable<CheckupLine> OfHouse(NurserySettings nursery, string name, SourceEnd[] ends, Machine machine, int staleDays)
    {
        SourceEnd newest = ends.MaxBy(s => s.Last)!;
        if (Days(machine.Now - newest.Last) is int days && days >= staleDays)
        {
            yield return CheckupLine.Look("data.stale", $"{name} has sent nothing for {Checkup.Count(days, "day")}: its newest reading is of {Local(newest.Last, nursery)}.",
                "Look whether its logger stopped, or whether the newest export has not arrived or was not imported.");
            yield break; // its sources are as old or older
        }

        yield return CheckupLine.Fine("data.stale", $"{name}: the newest reading is of {Local(newest.Last, nursery)}.");
        foreach (SourceEnd source in ends.Where(s => Days(newest.Last - s.Last) >= staleDays))
        {
            yield return CheckupLine.Look("data.source", $"{name}: the source \"{source.Name}\" ends {Local(source.Last, nursery)}, {Checkup.Count(Days(newest.Last - source.Last), "day")} before the newest reading.",
                "Look whether that logger stopped; if it was taken away on purpose, leave it: its earlier readings stay in use.");
        }
    }

    private static int Days(Duration age) => (int)Math.Floor(age.TotalDays);
}

/// <summary>A source of readings and its last stamp.</summary>
/// <param name="House">House id, or "nursery".</param>
/// <param name="Name">Export name.</param>
/// <param name="Last">Last stamp.</param>
internal sealed record SourceEnd(string House, string Name, Instant Last);
