using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Sheets;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using CsvHelper;

namespace ClimateLens.Logs.Import;

/// <summary>Imports the files of one export.</summary>
/// <param name="nursery">The nursery.</param>
/// <param name="export">Its settings.</param>
/// <param name="known">What the ledger says of files that count as read; the list is not changed.</param>
/// <param name="content">The rows of the source.</param>
/// <param name="transaction">Where set-aside rows go; null for a check, which keeps nothing.</param>
/// <param name="problems">Where problems go.</param>
/// <param name="progress">Told of each file that is read.</param>
internal sealed class SourceImport(
    NurserySettings nursery,
    ExportSettings export,
    IReadOnlyList<LedgerFile> known,
    SourceContent content,
    StoreTransaction? transaction,
    ProblemList problems,
    Action<string>? progress)
{
    private readonly Dictionary<string, LedgerFile> _byHash = known.DistinctBy(f => f.Sha256).ToDictionary(f => f.Sha256);
    private readonly Dictionary<string, string> _latest = known.GroupBy(f => f.File).ToDictionary(versions => versions.Key, versions => versions.Last().Sha256, StringComparer.Ordinal);
    private readonly HashSet<string> _present = [];

    /// <summary>Files of this source that were imported before, read again or not: what they say of times and names counts.</summary>
    public IReadOnlyList<LedgerFile> Before { get; init; } = known;

    /// <summary>Files read in this run, in order.</summary>
    public List<LedgerFile> Read { get; } = [];

    /// <summary>Files that changed nothing.</summary>
    public int Known { get; private set; }

    /// <summary>Imports the files that are not known.</summary>
    public void Run(IReadOnlyList<Candidate> files)
    {
        _present.UnionWith(files.Select(f => f.Sha256).OfType<string>());
        foreach (Candidate file in files)
        {
            if (file.Sha256 is string hash && _byHash.TryGetValue(hash, out LedgerFile? entry) && !IsBack(file, entry))
            {
                Known++;
                KnownFiles.Report(file.File, entry, problems);
                continue;
            }

            progress?.Invoke(file.File.Name);
            if (Import(file) is LedgerFile read)
            {
                Read.Add(read);
                _byHash.TryAdd(read.Sha256, read);
            }
        }
    }

    /// <summary>Whether a file has become again what it was before a version that was read later: its rows are no longer those in the store.</summary>
    private bool IsBack(Candidate file, LedgerFile entry) => entry.File == file.File.Name && _latest.TryGetValue(entry.File, out string? latest) && latest != entry.Sha256;

    private LedgerFile? Import(Candidate file)
    {
        var found = new ProblemList();
        LedgerFile? entry = Import(file, expectOrder: true, found, out bool again);
        if (again)
        {
            found = new ProblemList();
            entry = Import(file, expectOrder: false, found, out _);
        }

        problems.Add(found);
        return entry;
    }

    private LedgerFile? Import(Candidate candidate, bool expectOrder, ProblemList found, out bool again)
    {
        again = false;
        ExportFile file = candidate.File;
        using OpenedExport? opened = OpenedExport.TryOpen(file, export.Dialect, out Problem? problem);
        if (opened is null)
        {
            found.Add(problem!);
            return null;
        }

        var counts = new RowCounts();
        using var kept = new KeptAside(SourceKey.Of(export), file.Name, candidate.Sha256, transaction, found);
        var being = new FileBeingRead(file.Name, opened, candidate.Sha256, kept.Log, counts)
        {
            ExpectOrder = expectOrder,
            HasEarlierVersion = Before.Concat(Read).Any(f => f.File == file.Name && f.Sha256 != candidate.Sha256),
            IsPresent = _present.Contains,
            IsElsewhere = utc => Before.Concat(Read).Any(f => f.File != file.Name && f.Covers(utc)),
        };
        Taken taken = opened.IsEmpty ? Taken.Whole : Take(being, found);
        again = taken == Taken.Again;
        if (taken != Taken.Whole)
        {
            return null;
        }

        if (opened.NulTailBytes > 0)
        {
            found.Add(ProblemCodes.NulTail.In(file.Name, null, null, $"{opened.NulTailBytes} NUL bytes at the end", ""));
        }

        if (counts.Read == 0 && counts.OfOthers == 0)
        {
            found.Add(KnownFiles.WithoutRows(file, opened.IsEmpty));
        }

        string hash = being.Source.Sha256;
        LedgerFile entry = Entry(file, hash, opened.Stream.Length, counts, kept.Keep(hash)) with { Details = DetailsOf(opened, counts, kept.Log.Reasons) };
        return transaction is null ? entry : entry with { Sheet = SheetFile.Write(transaction, SourceKey.Of(export), entry) };
    }

    private Taken Take(FileBeingRead file, ProblemList found)
    {
        try
        {
            return content.Take(file);
        }
        catch (CsvFormatException e)
        {
            int? line = e.LineNumber > 0 ? (int)Math.Min(e.LineNumber, int.MaxValue) : null;
            found.Add(ProblemCodes.RowTooLong.In(file.Name, line, null, $"a row longer than {TextLimits.RowBytes >> 20} MiB", "rows that end"));
        }
        catch (ExportReadException)
        {
            found.Add(ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read to its end", "a file that can be read"));
        }

        return Taken.Nothing;
    }

    private ImportDetails DetailsOf(OpenedExport opened, RowCounts counts, ReasonList reasons)
        => counts.Facts.Details(opened.Dialect, opened.Encoding, reasons, export.StepSeconds ?? counts.Step?.Seconds) with { Clock = counts.Facts.Series?.Clock(nursery, export) };

    private static LedgerFile Entry(ExportFile file, string hash, long size, RowCounts counts, StoredFile? aside) => new()
    {
        File = file.Name,
        Sha256 = hash,
        Size = size,
        RowsRead = counts.Read,
        Accepted = counts.Accepted,
        SetAside = counts.SetAside,
        Duplicates = counts.Duplicates,
        Blank = counts.Blank,
        First = counts.Accepted > 0 ? counts.First : null,
        Last = counts.Accepted > 0 ? counts.Last : null,
        From = counts.From <= counts.To ? counts.From : null,
        To = counts.From <= counts.To ? counts.To : null,
        CellsNotRead = counts.CellsNotRead,
        Conflicts = counts.Conflicts,
        SetAsideFile = aside,
    };
}
