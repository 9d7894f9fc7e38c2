using System.Collections.Immutable;
using ClimateLens.Logs.Store;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Health;

/// <summary>
/// Looks over what a run that nobody watches depends on: folders, lock, the store's bytes, clock, how fresh the data are, what is set aside, files. It takes no
/// lock for longer than a moment and changes nothing but a probe file, which it removes.
/// </summary>
public static class Checkup
{
    /// <summary>Days without a reading after which a house counts as silent. Common practice, no source.</summary>
    public const int UsualStaleDays = 3;

    /// <summary>Looks at everything.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    /// <param name="siteFolder">Folder of the site, full path.</param>
    /// <param name="machine">What the machine says of itself.</param>
    /// <param name="staleDays">Days without a reading after which a house counts as silent, at least 1. [d]</param>
    /// <returns>A line for each thing looked at, in a fixed order.</returns>
    public static ImmutableArray<CheckupLine> Of(NurserySettings nursery, string nurseryFolder, string siteFolder, Machine machine, int staleDays = UsualStaleDays)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentOutOfRangeException.ThrowIfLessThan(staleDays, 1);
        string store = ReadingStore.FolderOf(nursery, nurseryFolder);
        Ledger? ledger = LedgerOf(store, out CheckupLine state);
        Ledger known = ledger ?? new Ledger();
        return
        [
            .. FolderCheck.Of("store", store, machine),
            .. FolderCheck.Of("site", siteFolder, machine),
            LockCheck.Of(store),
            state,
            .. PartsCheck.Of(store, known, () => LedgerOf(store, out _)),
            .. ClockSanity.Of(nursery, known, machine),
            .. Freshness.Of(nursery, known, machine, staleDays),
            .. SetAsideGrowth.Of(known),
            .. ExportMatch.Of(nursery, nurseryFolder),
        ];
    }

    // The ledger is replaced in one step, so it reads whole without the lock.
    private static Ledger? LedgerOf(string store, out CheckupLine state)
    {
        string path = Path.Combine(store, StorePaths.Ledger);
        try
        {
            Ledger? ledger = File.Exists(path) ? LedgerFormat.Read(File.ReadAllBytes(path)) : null;
            state = (ledger, File.Exists(path)) switch
            {
                (not null, _) => CheckupLine.Fine("store.ledger", $"The store knows {Count(ledger.Sources.Sum(s => s.Files.Select(f => f.File).Distinct().Count()), "imported file")}."),
                (null, true) => CheckupLine.Look("store.ledger", "The store's ledger is damaged or of another version.", "The next import builds it again from the readings and the exports; keep the exports until then."),
                _ when Directory.Exists(Path.Combine(store, StorePaths.ReadingsFolder)) => CheckupLine.Look("store.ledger", "The store holds readings, but its ledger is gone.", "The next import builds it again from the readings and the exports; keep the exports until then."),
                _ => CheckupLine.Look("store.ledger", "Nothing was imported yet.", "Run climatelens run or import."),
            };
            return ledger;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            state = CheckupLine.Look("store.ledger", $"The store's ledger cannot be read: {e.Message}", "Give the user of the scheduled run the right to read the store.");
            return null;
        }
    }

    /// <summary>A number with its noun.</summary>
    internal static string Count(int count, string noun) => FormattableString.Invariant($"{count} {noun}{(count == 1 ? "" : "s")}");
}
