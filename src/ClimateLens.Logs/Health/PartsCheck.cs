using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Health;

/// <summary>
/// Whether each part of the store still has the bytes that were written. A run reads only what it needs for the weeks it makes, so that
/// without this a disk that goes bad would show years later, when the exports are gone from which a part is built again.
/// </summary>
internal static class PartsCheck
{
    private const int MostNamed = 3;

    /// <summary>Reads every part once.</summary>
    /// <param name="store">Folder of the store.</param>
    /// <param name="ledger">What it should hold.</param>
    /// <param name="now">Reads the ledger again: a run beside this one may have replaced parts meanwhile. Null where there is none.</param>
    public static IEnumerable<CheckupLine> Of(string store, Ledger ledger, Func<Ledger?> now)
    {
        List<StoredFile> parts = [.. Stored(ledger)];
        if (parts.Count == 0)
        {
            yield break;
        }

        PartReader reader = new(store);
        List<StoredFile> faulty = [.. parts.Where(p => !IsAsWritten(reader, p))];
        if (faulty.Count > 0)
        {
            faulty = [.. faulty.Intersect(now() is { } later ? Stored(later) : [])];
        }

        yield return faulty.Count == 0
            ? CheckupLine.Fine("store.parts", $"{Checkup.Count(parts.Count, "part")} of the store {(parts.Count == 1 ? "is" : "are")} as written.")
            : CheckupLine.Look(
                "store.parts",
                $"{Checkup.Count(faulty.Count, "part")} of the store {(faulty.Count == 1 ? "is" : "are")} damaged, missing or not to be read: {string.Join(", ", faulty.Take(MostNamed).Select(p => p.Path))}{(faulty.Count > MostNamed ? " and others" : "")}.",
                "Look at the disk. Move them out of the store; the next run builds them again from the exports, which must still lie where they were.");
    }

    private static IEnumerable<StoredFile> Stored(Ledger ledger) => ledger.Sources.SelectMany(s => s.Parts).Select(p => p.Stored);

    private static bool IsAsWritten(PartReader reader, StoredFile part)
    {
        try
        {
            return reader.IsAsWritten(part);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
