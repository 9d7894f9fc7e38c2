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
/// <param name="problems">Where problems go.</param>
/// <param name="progress">Told of each file that is read.</param>
internal sealed class SourceUpdate(
    NurserySettings nursery,
    ExportSettings export,
    PartReader reader,
    StoreTransaction transaction,
    ProblemList problems,
    Action<string>? progress)
{
    private readonly string[] _houses = [.. nursery.Houses.Select(h => h.Id)];

    /// <summary>Files read, in order.</summary>
    public List<LedgerFile> Read { get; private set; } = [];

    /// <summary>Files that changed nothing.</summary>
    public int Known { get; private set; }

    /// <summary>Files of the store that are no longer in force.</summary>
    public List<string> Obsolete { get; } = [];

    /// <summary>The source after the update; null when nothing changed.</summary>
    public LedgerSource? Run(LedgerSource? held, IReadOnlyList<(ExportFile File, string Sha256)> files)
    {
        string settings = SettingsHash.Of(export, nursery);
        if (held is null)
        {
            held = new LedgerSource { House = export.House, Kind = WordOf(export), Source = export.Name, Settings = settings };
        }
        else if (held.Settings != settings)
        {
            return Rebuild(held, settings, files, []);
        }

        string[] damaged = [.. held.Parts.Select(p => p.Stored).Concat(SheetsOf(held, files)).Where(f => !reader.LooksWhole(f)).Select(f => f.Path)];
        if (damaged.Length > 0)
        {
            return Rebuild(held, settings, files, damaged);
        }

        try
        {
            return Add(held, files);
        }
        catch (DamagedPartException e)
        {
            return Rebuild(held, settings, files, [e.Path]);
        }
    }

    /// <summary>Builds the source again, whatever its state.</summary>
    public LedgerSource Rebuild(LedgerSource held, IReadOnlyList<(ExportFile File, string Sha256)> files, string damaged)
        => Rebuild(held, SettingsHash.Of(export, nursery), files, [damaged]);

    private LedgerSource? Add(LedgerSource held, IReadOnlyList<(ExportFile File, string Sha256)> files)
    {
        SourceContent content = Content(held.Parts, reader);
        var import = new SourceImport(nursery, export, held.Files, content, transaction, problems, progress);
        import.Run(files);
        (Read, Known) = (import.Read, import.Known);
        return Read.Count == 0 ? null : held with { Files = [.. held.Files, .. Read], Parts = content.Save(transaction) };
    }

    private LedgerSource Rebuild(LedgerSource held, string settings, IReadOnlyList<(ExportFile File, string Sha256)> files, IReadOnlyCollection<string> damaged)
    {
        SourceContent content = Content([], null);
        var import = new SourceImport(nursery, export, [], content, transaction, problems, progress);
        Dictionary<string, int> order = held.Files.Select((f, i) => (f.Sha256, i)).DistinctBy(f => f.Sha256).ToDictionary(f => f.Sha256, f => f.i);
        import.Run(files.OrderBy(f => order.GetValueOrDefault(f.Sha256, int.MaxValue)));
        (Read, Known) = (import.Read, import.Known);

        HashSet<string> again = [.. Read.Select(f => f.Sha256)];
        List<LedgerFile> gone = [.. held.Files.Where(f => !again.Contains(f.Sha256))];
        var lost = new List<string>(damaged);
        int kept = content.KeepOld([.. held.Parts.Where(p => !damaged.Contains(p.Stored.Path))], gone.Select(f => f.Sha256).ToHashSet(), reader, lost);
        Report(held, settings, kept, gone, lost);
        LedgerSource built = held with { Settings = settings, Files = [.. gone.Concat(Read).OrderBy(f => order.GetValueOrDefault(f.Sha256, int.MaxValue))], Parts = content.Save(transaction) };
        Obsolete.AddRange(StoredIn(held).Except(StoredIn(built)));
        return built;
    }

    private void Report(LedgerSource held, string settings, int kept, List<LedgerFile> gone, List<string> damaged)
    {
        foreach (string path in damaged)
        {
            problems.Add(ProblemCodes.Damaged.In(path, null, null, "a missing or damaged file of the store", ""));
        }

        if (kept > 0 && held.Settings != settings)
        {
            string names = string.Join(", ", gone.Select(f => SafeText.Quote(f.File)).Distinct());
            problems.Add(ProblemCodes.KeptOld.In(nursery.FileName, export.Line, null, $"{kept} rows of {names}, read with the old settings", "the files"));
        }
    }

    private SourceContent Content(IReadOnlyList<LedgerPart> parts, PartReader? from) => ContentOf(export, _houses, parts, from);

    /// <summary>The content of an export's source.</summary>
    public static SourceContent ContentOf(ExportSettings export, IReadOnlyCollection<string> houses, IReadOnlyList<LedgerPart> parts, PartReader? from)
        => export.Kind is Nursery.Records.RecordKind kind ? new RecordSource(export, kind, houses, parts, from) : new ReadingSource(export, parts, from);

    private static IEnumerable<string> StoredIn(LedgerSource source)
        => source.Parts.Select(p => p.Stored.Path).Concat(source.Files.SelectMany(f => new[] { f.SetAsideFile?.Path, f.Sheet?.Path }).OfType<string>());

    /// <summary>The sheets of files that can be read again.</summary>
    private static IEnumerable<StoredFile> SheetsOf(LedgerSource source, IEnumerable<(ExportFile File, string Sha256)> files)
    {
        HashSet<string> there = [.. files.Select(f => f.Sha256)];
        return source.Files.Where(f => there.Contains(f.Sha256)).Select(f => f.Sheet).OfType<StoredFile>();
    }

    private static string? WordOf(ExportSettings export)
        => export.Kind is Nursery.Records.RecordKind kind ? Nursery.Records.RecordKinds.WordOf(kind) : null;
}
