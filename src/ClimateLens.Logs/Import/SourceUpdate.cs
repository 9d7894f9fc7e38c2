using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Import;

/// <summary>
/// Brings one source of the store up to date: reads new files over what is there or, where the settings changed or a
/// part is damaged, builds the source again from its files.
/// </summary>
/// <param name="nursery">The nursery.</param>
/// <param name="export">The export of the source.</param>
/// <param name="reader">Reads the store.</param>
/// <param name="transaction">Takes what changes.</param>
/// <param name="limits">How much is held in memory.</param>
/// <param name="problems">Where problems go.</param>
/// <param name="progress">Told of each file that is read.</param>
internal sealed class SourceUpdate(
    NurserySettings nursery,
    ExportSettings export,
    PartReader reader,
    StoreTransaction transaction,
    MemoryLimits limits,
    ProblemList problems,
    Action<string>? progress)
{
    private readonly string _settings = SettingsHash.Of(export, nursery);

    /// <summary>Files read, in order.</summary>
    public List<LedgerFile> Read { get; private set; } = [];

    /// <summary>Files that changed nothing.</summary>
    public int Known { get; private set; }

    /// <summary>Files of the store that are no longer in force.</summary>
    public List<string> Obsolete { get; } = [];

    /// <summary>The source after the update; null when nothing changed.</summary>
    public LedgerSource? Run(LedgerSource? held, IReadOnlyList<ExportFile> files)
    {
        List<Candidate> candidates = Candidates.Of(files, held?.Files ?? [], export.Dialect, problems);
        held ??= new LedgerSource { House = export.House, Kind = WordOf(export), Source = export.Name, Settings = _settings };
        if (held.Settings != _settings)
        {
            return Rebuild(held, candidates, []);
        }

        string[] damaged = [.. held.Parts.Select(p => p.Stored).Concat(SheetsOf(held, candidates)).Where(f => !reader.LooksWhole(f)).Select(f => f.Path)];
        return damaged.Length > 0 ? Rebuild(held, candidates, damaged) : AddOrRebuild(held, candidates);
    }

    /// <summary>Builds the source again, whatever its state.</summary>
    public LedgerSource Rebuild(LedgerSource held, IReadOnlyList<ExportFile> files, string damaged)
        => Rebuild(held, Candidates.Of(files, held.Files, export.Dialect, problems), [damaged]);

    private LedgerSource? AddOrRebuild(LedgerSource held, List<Candidate> files)
    {
        var found = new ProblemList();
        try
        {
            LedgerSource? added = Add(held, files, found);
            problems.Add(found);
            return added;
        }
        catch (DamagedPartException e)
        {
            return Rebuild(held, files, [e.Path]);
        }
    }

    private LedgerSource? Add(LedgerSource held, List<Candidate> files, ProblemList found)
    {
        SourceContent content = Content(held.Parts, held.IsAdopted);
        var import = new SourceImport(nursery, export, held.IsAdopted ? [] : held.Files, content, transaction, found, progress) { Before = held.Files };
        import.Run(files);
        (Read, Known) = (import.Read, import.Known);
        if (Read.Count == 0 && !held.IsAdopted)
        {
            return null;
        }

        HashSet<string> again = [.. Read.Select(f => f.Sha256)];
        return Replaced(held, held with { IsAdopted = false, Files = [.. held.Files.Where(f => !again.Contains(f.Sha256)), .. Read], Parts = content.Save() });
    }

    private LedgerSource Rebuild(LedgerSource held, List<Candidate> files, IReadOnlyCollection<string> damaged)
    {
        SourceContent content = Content([], storeStands: false);
        HashSet<string> present = [.. files.Select(f => f.Sha256).OfType<string>()];
        List<string> lost = [.. damaged];
        if (held.Files.Exists(f => !present.Contains(f.Sha256)))
        {
            lost.AddRange(content.StartFrom([.. held.Parts.Where(p => !damaged.Contains(p.Stored.Path))], file => !present.Contains(file.Sha256)));
        }

        var import = new SourceImport(nursery, export, [], content, transaction, problems, progress) { Before = held.Files };
        Dictionary<string, int> order = held.Files.Select((f, i) => (f.Sha256, i)).DistinctBy(f => f.Sha256).ToDictionary(f => f.Sha256, f => f.i);
        import.Run([.. files.OrderBy(f => order.GetValueOrDefault(f.Sha256 ?? "", int.MaxValue))]);
        (Read, Known) = (import.Read, import.Known);

        HashSet<string> again = [.. Read.Select(f => f.Sha256)];
        List<LedgerFile> gone = [.. held.Files.Where(f => !again.Contains(f.Sha256))];
        Report(held, content.CountRows(file => !present.Contains(file.Sha256) && !again.Contains(file.Sha256)), gone, lost);
        List<LedgerFile> all = [.. gone.Concat(Read).OrderBy(f => order.GetValueOrDefault(f.Sha256, int.MaxValue))];
        return Replaced(held, held with { IsAdopted = false, Settings = _settings, Files = all, Parts = content.Save() });
    }

    /// <summary>Notes what of the old state is no longer in force.</summary>
    private LedgerSource Replaced(LedgerSource held, LedgerSource now)
    {
        Obsolete.AddRange(StoredIn(held).Except(StoredIn(now)));
        return now;
    }

    private void Report(LedgerSource held, int kept, List<LedgerFile> gone, List<string> damaged)
    {
        string names = string.Join(", ", gone.Select(f => SafeText.Quote(f.File)).Distinct());
        foreach (string path in damaged)
        {
            if (gone.Count == 0)
            {
                problems.Add(ProblemCodes.Damaged.In(path, null, null, "a missing or damaged file of the store", ""));
                continue;
            }

            string where = transaction.KeepDamaged(path) is string copy ? $"what is left of it lies in {copy}" : "nothing is left of it";
            problems.Add(ProblemCodes.DamagedLost.In(path, null, null, $"a missing or damaged file of the store, and {names} cannot be read again; {where}", "the exports behind it"));
        }

        if (kept > 0 && held.Settings != _settings)
        {
            problems.Add(ProblemCodes.KeptOld.In(nursery.FileName, export.Line, null, $"{kept} rows of {names}, read with the old settings", "the files"));
        }
    }

    private SourceContent Content(IReadOnlyList<LedgerPart> parts, bool storeStands)
        => ContentOf(export, nursery, parts, reader, new Workshop(transaction, transaction.Spill, limits, _settings), storeStands);

    /// <summary>The content of an export's source.</summary>
    public static SourceContent ContentOf(ExportSettings export, NurserySettings nursery, IReadOnlyList<LedgerPart> parts, PartReader? from, Workshop workshop, bool storeStands)
        => export.Kind is Nursery.Records.RecordKind kind
            ? new RecordSource(export, kind, nursery, parts, from, workshop) { StoreStands = storeStands }
            : new ReadingSource(export, parts, from, workshop) { StoreStands = storeStands };

    private static IEnumerable<string> StoredIn(LedgerSource source)
        => source.Parts.Select(p => p.Stored.Path).Concat(source.Files.SelectMany(f => new[] { f.SetAsideFile?.Path, f.Sheet?.Path }).OfType<string>());

    /// <summary>The sheets of files that can be read again.</summary>
    private static IEnumerable<StoredFile> SheetsOf(LedgerSource source, IEnumerable<Candidate> files)
    {
        HashSet<string> there = [.. files.Select(f => f.Sha256).OfType<string>()];
        return source.Files.Where(f => there.Contains(f.Sha256)).Select(f => f.Sheet).OfType<StoredFile>();
    }

    private static string? WordOf(ExportSettings export)
        => export.Kind is Nursery.Records.RecordKind kind ? Nursery.Records.RecordKinds.WordOf(kind) : null;
}
