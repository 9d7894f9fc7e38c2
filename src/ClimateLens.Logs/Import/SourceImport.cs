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
    private readonly Dictionary<string, string> _nameByHash = known.DistinctBy(f => f.Sha256).ToDictionary(f => f.Sha256, f => f.File);

    /// <summary>Files read in this run, in order.</summary>
    public List<LedgerFile> Read { get; } = [];

    /// <summary>Files that changed nothing.</summary>
    public int Known { get; private set; }

    /// <summary>Imports the files that are not known.</summary>
    public void Run(IEnumerable<(ExportFile File, string Sha256)> files)
    {
        foreach ((ExportFile file, string hash) in files)
        {
            if (_nameByHash.TryGetValue(hash, out string? name))
            {
                Known++;
                if (name != file.Name)
                {
                    problems.Add(ProblemCodes.SameFile.In(file.Name, null, null, $"the same bytes as {SafeText.Quote(name)}", ""));
                }

                continue;
            }

            progress?.Invoke(file.Name);
            if (Import(file, hash) is LedgerFile entry)
            {
                Read.Add(entry);
                _nameByHash.Add(hash, file.Name);
            }
        }
    }

    /// <summary>The hash of a file; null when it can't be read, which <see cref="OpenedExport"/> reports.</summary>
    public static string? HashOf(ExportFile file, DialectSettings dialect, ProblemList problems)
    {
        using OpenedExport? opened = OpenedExport.TryOpen(file, dialect, out Problem? problem);
        if (opened is null)
        {
            problems.Add(problem!);
            return null;
        }

        try
        {
            return ContentHash.Of(opened.Stream);
        }
        catch (IOException)
        {
            problems.Add(ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read to its end", "a file that can be read"));
            return null;
        }
    }

    private LedgerFile? Import(ExportFile file, string hash)
    {
        using OpenedExport? opened = OpenedExport.TryOpen(file, export.Dialect, out Problem? problem);
        if (opened is null)
        {
            problems.Add(problem!);
            return null;
        }

        string asidePath = StorePaths.SetAside(SourceKey.Of(export), file.Name, hash);
        var counts = new RowCounts();
        bool hasAside;
        bool taken;
        ReasonList reasons;
        using (var aside = new SetAsideLog(file.Name, problems, transaction is null ? null : () => transaction.Create(asidePath)))
        {
            taken = opened.IsEmpty || Take(opened, new SourceFile(hash, file.Name), aside, counts);
            hasAside = aside.HasFile;
            reasons = aside.Reasons;
        }

        if (!taken)
        {
            transaction?.Discard(asidePath);
            return null;
        }

        if (counts.Read == 0)
        {
            problems.Add((opened.IsEmpty ? ProblemCodes.Empty : ProblemCodes.HeaderOnly).In(file.Name, null, null, opened.IsEmpty ? "an empty file" : "no data rows", "data"));
        }

        LedgerFile entry = Entry(file, hash, opened.Stream.Length, counts, hasAside ? transaction!.Seal(asidePath) : null) with
        {
            Details = DetailsOf(opened, counts, reasons),
        };
        return transaction is null ? entry : entry with { Sheet = SheetFile.Write(transaction, SourceKey.Of(export), entry) };
    }

    private bool Take(OpenedExport opened, SourceFile file, SetAsideLog aside, RowCounts counts)
    {
        try
        {
            return content.Take(opened, file, aside, counts);
        }
        catch (CsvFormatException e)
        {
            int? line = e.LineNumber > 0 ? (int)Math.Min(e.LineNumber, int.MaxValue) : null;
            problems.Add(ProblemCodes.RowTooLong.In(file.File, line, null, $"a row longer than {TextLimits.RowBytes >> 20} MiB", "rows that end"));
            return false;
        }
    }

    private ImportDetails DetailsOf(OpenedExport opened, RowCounts counts, ReasonList reasons)
        => counts.Facts.Details(export.Dialect, opened.Encoding, reasons, export.StepSeconds) with { Clock = counts.Facts.Series?.Clock(nursery, export) };

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
        CellsNotRead = counts.CellsNotRead,
        Conflicts = counts.Conflicts,
        SetAsideFile = aside,
    };
}
