using System.IO.Compression;
using System.IO.Enumeration;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Packed;

/// <summary>Lists the entries of a zip archive that an export takes. Nothing is written under an entry's name.</summary>
/// <param name="dialect">Which entries are wanted.</param>
/// <param name="problems">Where problems go.</param>
internal sealed class ZipEntries(DialectSettings dialect, ProblemList problems)
{
    /// <summary>Endings of files that are read from archives and folders where no pattern names them.</summary>
    public static readonly string[] TextEndings = [".csv", ".txt", ".tsv", ".dat", ".log"];

    private static readonly string[] PackedEndings = [".zip", ".gz", ".7z", ".rar", ".tar", ".tgz", ".xlsx", ".xlsm", ".xls", ".ods"];

    /// <summary>Whether a file is looked into as an archive.</summary>
    public static bool IsArchive(string path) => path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);

    /// <summary>The entries in ordinal order; the file itself where it is no archive that can be listed, so that opening it tells why.</summary>
    public IReadOnlyList<ExportFile> Of(ExportFile file)
    {
        try
        {
            using FileStream? stream = DiskFile.TryOpen(file, out _);
            if (stream is null || PackedKinds.Of(stream) != PackedKind.Zip)
            {
                return [file];
            }

            if (ZipEnd.CountOf(stream) is int count and > PackedLimits.Entries)
            {
                problems.Add(ProblemCodes.Packed.In(file.Name, null, null, $"an archive of {count} entries or more", $"at most {PackedLimits.Entries}", "Pack fewer files into one archive."));
                return [];
            }

            using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
            return Wanted(file, archive);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return [file];
        }
    }

    private List<ExportFile> Wanted(ExportFile file, ZipArchive archive)
    {
        if (archive.Entries.Count > PackedLimits.Entries || archive.Entries.Sum(e => (double)e.Length) > PackedLimits.ArchiveBytes)
        {
            problems.Add(ProblemCodes.Packed.In(file.Name, null, null, $"an archive of {archive.Entries.Count} entries, {archive.Entries.Sum(e => (double)e.Length) / (1L << 30):F1} GiB", $"at most {PackedLimits.Entries} entries and {PackedLimits.ArchiveBytes >> 30} GiB", "Pack fewer files into one archive."));
            return [];
        }

        ZipArchiveEntry[] files = [.. archive.Entries.Where(e => !IsPassedOver(e.FullName)).OrderBy(e => e.FullName, StringComparer.Ordinal)];
        var wanted = new List<ExportFile>();
        foreach (IGrouping<string, ZipArchiveEntry> same in files.Where(IsWanted).GroupBy(e => e.FullName))
        {
            if (FaultOf(same.Key, same.Count()) is string fault)
            {
                problems.Add(ProblemCodes.Entry.In(file.Name, null, null, $"entry {SafeText.Quote(same.Key)}: {fault}", "a plain file with a name of its own"));
            }
            else
            {
                wanted.Add(new ExportFile(file.Path, $"{file.Name}/{same.Key}") { Entry = same.Key });
            }
        }

        string[] left = [.. files.Where(e => !IsWanted(e)).Select(e => SafeText.Quote(e.FullName))];
        if (wanted.Count == 0 || left.Length > 0)
        {
            string found = left.Length == 0 ? "no entry" : $"{wanted.Count} entries taken, {left.Length} left: {string.Join(", ", left.Take(5))}{(left.Length > 5 ? " and more" : "")}";
            problems.Add((wanted.Count == 0 ? ProblemCodes.NoEntries : ProblemCodes.EntriesLeft).In(file.Name, null, null, found, dialect.Entries.IsEmpty ? "entries that end in " + string.Join(", ", TextEndings) : "entries like " + string.Join(", ", dialect.Entries.Select(SafeText.Quote))));
        }

        return wanted;
    }

    private bool IsWanted(ZipArchiveEntry entry) => dialect.Entries.IsEmpty
        ? TextEndings.Any(ending => entry.FullName.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
        : dialect.Entries.Any(pattern => FileSystemName.MatchesSimpleExpression(pattern, pattern.Contains('/', StringComparison.Ordinal) ? entry.FullName : entry.Name));

    /// <summary>Folders, and what systems put into archives for themselves.</summary>
    private static bool IsPassedOver(string name)
        => name.EndsWith('/') || name.StartsWith("__MACOSX/", StringComparison.Ordinal) || name[(name.LastIndexOf('/') + 1)..].StartsWith('.');

    private static string? FaultOf(string name, int times)
    {
        if (times > 1)
        {
            return $"{times} entries of this name";
        }

        if (name.Length > 1000 || name.Any(char.IsControl))
        {
            return "a name that no file has";
        }

        if (name.Contains('\\', StringComparison.Ordinal) || name.StartsWith('/') || name.Contains(':', StringComparison.Ordinal) || name.Split('/').Contains(".."))
        {
            return "a name that leads out of the archive";
        }

        return PackedEndings.Any(ending => name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) ? "a packed file within a packed file; unpack it first" : null;
    }
}
