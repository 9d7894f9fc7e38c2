using ClimateLens.Logs.Readings;
using ClimateLens.Logs.Records;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using Parquet;

namespace ClimateLens.Logs.Store;

/// <summary>Reads the ledger of a store; builds it again from the store's parts where it is missing or damaged.</summary>
internal static class LedgerKeeper
{
    /// <summary>Reads the ledger.</summary>
    /// <param name="folder">The store.</param>
    /// <param name="nursery">The nursery.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="lost">Whether parts were found without a ledger that could be read.</param>
    public static Ledger Read(string folder, NurserySettings nursery, StoreDisk disk, out bool lost)
    {
        string path = Path.Combine(folder, StorePaths.Ledger);
        Ledger? ledger = File.Exists(path) ? LedgerFormat.Read(File.ReadAllBytes(path)) : null;
        StoreTransaction.Recover(folder, ledger, disk);
        lost = false;
        if (ledger is not null)
        {
            return ledger;
        }

        var sources = nursery.Exports.Select(export => Adopt(folder, export, nursery.Houses.Select(h => h.Id))).OfType<LedgerSource>().ToList();
        lost = sources.Count > 0;
        return new Ledger { Sources = sources };
    }

    /// <summary>A source from its parts. The next import reads its files again, since only they tell what became of their rows.</summary>
    private static LedgerSource? Adopt(string folder, ExportSettings export, IEnumerable<string> houses)
    {
        var parts = new List<LedgerPart>();
        var files = new List<SourceFile>();
        var settings = new HashSet<string>(StringComparer.Ordinal);
        foreach ((string relative, string house, int year) in Candidates(folder, export, houses))
        {
            if (AdoptPart(folder, relative, house, year, export.Kind, files, settings) is LedgerPart part)
            {
                parts.Add(part);
            }
        }

        return parts.Count == 0 ? null : new LedgerSource
        {
            House = export.House,
            Kind = export.Kind is RecordKind kind ? RecordKinds.WordOf(kind) : null,
            Source = export.Name,
            Settings = settings.Count == 1 ? settings.Single() : "",
            IsAdopted = true,
            Files = [.. files.DistinctBy(f => f.Sha256).OrderBy(f => f.File, StringComparer.Ordinal).Select(f => new LedgerFile { File = f.File, Sha256 = f.Sha256, Size = LedgerFile.UnknownSize })],
            Parts = parts,
        };
    }

    private static string SettingsIn(MemoryStream stream)
    {
        using var footer = PartFooter.Open(stream);
        stream.Position = 0;
        return footer.Settings;
    }

    private static IEnumerable<(string Relative, string House, int Year)> Candidates(string folder, ExportSettings export, IEnumerable<string> houses)
    {
        if (export.Kind is RecordKind kind)
        {
            return houses.Append(Nursery.Time.ReadingBatch.WholeNursery).Select(house => (StorePaths.Records(house, kind, export.Name), house, 0)).Where(c => File.Exists(Path.Combine(folder, c.Item1)));
        }

        string source = Path.Combine(folder, Path.GetDirectoryName(Path.GetDirectoryName(StorePaths.Readings(export.House, export.Name, 0)))!);
        return !Directory.Exists(source) ? [] : Directory.GetDirectories(source, "year=*").Order(StringComparer.Ordinal)
            .Select(year => int.TryParse(Path.GetFileName(year).AsSpan("year=".Length), out int number) ? number : -1)
            .Select(year => (StorePaths.Readings(export.House, export.Name, year), export.House, year))
            .Where(c => c.year >= 0 && File.Exists(Path.Combine(folder, c.Item1)));
    }

    private static LedgerPart? AdoptPart(string folder, string relative, string house, int year, RecordKind? kind, List<SourceFile> files, HashSet<string> settings)
    {
        byte[] bytes = File.ReadAllBytes(Path.Combine(folder, relative));
        var stored = new StoredFile(relative, bytes.Length, ContentHash.Of(bytes));
        try
        {
            using var stream = new MemoryStream(bytes, writable: false);
            settings.Add(SettingsIn(stream));
            if (kind is RecordKind known)
            {
                (List<StoredRecord> records, List<SourceFile> named) = RecordPart.Read(stream, house, known);
                files.AddRange(named);
                return new LedgerPart(stored, house, 0, records.Count, records.Min(r => r.Utc), records.Max(r => r.Utc)) { Trace = PartTracer.Of(records, named) };
            }

            (YearRows rows, List<SourceFile> from) = ReadingPart.Read(stream);
            files.AddRange(from);
            return rows.Count == 0 ? null : new LedgerPart(stored, house, year, rows.Count, rows.Utc[0], rows.Utc[rows.Count - 1]) { Trace = PartTracer.Of(rows) };
        }
        catch (Exception e) when (e is IOException or InvalidDataException or ParquetException)
        {
            return null; // no part of ours, or a torn one: its files are read again
        }
    }
}
