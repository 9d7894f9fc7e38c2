using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ClimateLens.Logs.Import;
using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Logs;

/// <summary>
/// The readings and records of a nursery on disk (docs/store.md). One process holds it at a time; it changes only by
/// <see cref="Import"/>, source by source, each of them whole or not at all.
/// </summary>
public sealed class ReadingStore : IDisposable
{
    // Changed sources are put in force together, up to so many: the ledger, which tells of all, is written once for them.
    private const int SourcesAtOnce = 64;
    private const long BytesAtOnce = 64L << 20;

    private readonly NurserySettings _nursery;
    private readonly string _nurseryFolder;
    private readonly string _folder;
    private readonly StoreLock _lock;
    private readonly StoreDisk _disk;
    private readonly MemoryLimits _limits;
    private readonly PartReader _reader;
    private readonly EarlierWeeks _earlier = new();
    private readonly PartCache _cache;
    private readonly bool _readsOnly;
    private bool _ledgerLost;
    private Ledger _ledger;
    private LedgerIndex? _index;
    private StoreTrace? _trace;
    private string? _version;
    private ProblemList _healed = new();

    private ReadingStore(NurserySettings nursery, string nurseryFolder, string folder, StoreLock held, StoreDisk disk, MemoryLimits limits, bool readsOnly = false)
    {
        (_disk, _limits, _readsOnly) = (disk, limits, readsOnly);
        _nursery = nursery;
        _nurseryFolder = nurseryFolder;
        _folder = folder;
        _lock = held;
        _reader = new PartReader(folder);
        _cache = new PartCache(_reader);
        _ledger = readsOnly ? LedgerAsItStands(folder) : LedgerKeeper.Read(folder, nursery, disk, out _ledgerLost);
    }

    /// <summary>Sheets of all files ever imported, in the order of their sources and of their import.</summary>
    public ImmutableArray<ImportSheet> Sheets => [.. _ledger.Sources.SelectMany(s => s.Files.Select(f => ImportSheets.Of(f, s.Key)))];

    /// <summary>What was set aside of every file, in the order of the sources and of their import; read only when it is asked for.</summary>
    public ImmutableArray<SetAsideFile> SetAside => [.. _ledger.Sources.SelectMany(s => SetAsideFile.Of(_folder, s))];

    /// <summary>
    /// A hash that changes exactly when the stored readings or records change, or the files behind them and what became of
    /// their rows: all that <see cref="Load"/> gives. Files that do not overlap give it in whatever order they are imported.
    /// </summary>
    public string Version => _version ??= ContentHash.Of(Encoding.UTF8.GetBytes(string.Join('\n', _ledger.Sources
        .SelectMany(s => s.Parts.Select(p => $"{p.Stored.Path} {p.Stored.Sha256}")
            .Concat(s.Files.Select(f => $"{s.Key} {JsonSerializer.Serialize(f, LedgerFormat.Default.LedgerFile)}")))
        .Order(StringComparer.Ordinal))));

    /// <summary>Folder of a nursery's store, full path.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    public static string FolderOf(NurserySettings nursery, string nurseryFolder)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return Path.GetFullPath(Path.Combine(nurseryFolder, nursery.Store));
    }

    /// <summary>Whether anything was ever imported into the store of a nursery; opens nothing and makes nothing.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    public static bool Exists(NurserySettings nursery, string nurseryFolder)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return File.Exists(Path.Combine(FolderOf(nursery, nurseryFolder), StorePaths.Ledger));
    }

    /// <summary>Opens the store of a nursery and holds it; creates its folder, and finishes or undoes what a killed run left.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    /// <exception cref="StoreLockedException">Another run holds it.</exception>
    /// <exception cref="StoreUnavailableException">Its folder cannot be written or read.</exception>
    public static ReadingStore Open(NurserySettings nursery, string nurseryFolder) => Open(nursery, nurseryFolder, StoreDisk.Real, MemoryLimits.Usual);

    /// <summary>Opens the store on a disk that may fail, or with little memory: for tests.</summary>
    internal static ReadingStore Open(NurserySettings nursery, string nurseryFolder, StoreDisk disk, MemoryLimits limits)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        string folder = FolderOf(nursery, nurseryFolder);
        StoreLock held = StoreLock.Take(folder);
        try
        {
            return new ReadingStore(nursery, nurseryFolder, folder, held, disk, limits);
        }
        catch (Exception e)
        {
            held.Dispose();
            throw e is IOException or UnauthorizedAccessException ? Unavailable(folder, e) : e;
        }
    }

    /// <summary>Opens the store of a nursery beside others who read it; while one of them has it open, none can import.</summary>
    /// <param name="nursery">The nursery.</param>
    /// <param name="nurseryFolder">Folder of the nursery file.</param>
    /// <exception cref="StoreLockedException">A run that may change it holds it.</exception>
    /// <exception cref="StoreUnavailableException">It cannot be read, or its ledger is damaged: an import mends that.</exception>
    public static ReadingStore OpenToRead(NurserySettings nursery, string nurseryFolder)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        string folder = FolderOf(nursery, nurseryFolder);
        StoreLock held = StoreLock.Share(folder);
        try
        {
            return new ReadingStore(nursery, nurseryFolder, folder, held, StoreDisk.Real, MemoryLimits.Usual, readsOnly: true);
        }
        catch (Exception e)
        {
            held.Dispose();
            throw e is UnauthorizedAccessException or (IOException and not StoreUnavailableException) ? Unavailable(folder, e) : e;
        }
    }

    private static Ledger LedgerAsItStands(string folder) => LedgerFormat.Read(File.ReadAllBytes(Path.Combine(folder, StorePaths.Ledger)))
        ?? throw new StoreUnavailableException($"The ledger of the store {folder} is damaged; an import builds it again.");

    /// <summary>Reads new and changed files into the store. Files with the same bytes and settings as before cost a hash.</summary>
    /// <param name="progress">Told the name of each file that is read.</param>
    /// <exception cref="StoreUnavailableException">The store cannot be written; what was in force stays in force.</exception>
    public ImportReport Import(Action<string>? progress = null)
    {
        if (_readsOnly)
        {
            throw new InvalidOperationException("A store opened to read takes in no files.");
        }

        var problems = new ProblemList();
        var sheets = ImmutableArray.CreateBuilder<ImportSheet>();
        var finder = new ExportFiles(_nurseryFolder, _nursery);
        int known = 0;
        if (_ledgerLost)
        {
            problems.Add(ProblemCodes.LedgerLost.In(StorePaths.Ledger, null, null, "no ledger beside readings", ""));
            _ledgerLost = false;
        }

        Queue<ExportSettings> left = new(_nursery.Exports);
        while (left.Count > 0)
        {
            Change((transaction, change) =>
            {
                while (change.Count < SourcesAtOnce && transaction.StagedBytes < BytesAtOnce && left.TryDequeue(out ExportSettings? export))
                {
                    List<ExportFile> files = finder.Of(export, _nursery.FileName, problems);
                    var update = new SourceUpdate(_nursery, export, _reader, transaction, _limits, problems, progress);
                    change.Take(update.Run(Index.SourceOf(export), files), update.Obsolete);
                    transaction.Spill.Dispose();
                    sheets.AddRange(update.Read.Select(file => ImportSheets.Of(file, SourceKey.Of(export))));
                    known += update.Known;
                }
            });
        }

        return new ImportReport(sheets.ToImmutable(), problems.ToImmutable(), sheets.Count, known);
    }

    /// <summary>First and last stored reading of a house's own sources; null when there is none. Reads no data.</summary>
    public Interval? Extent(string houseId)
    {
        LedgerPart[] parts = [.. Index.Of(houseId).Where(s => s.Export.Kind is null && s.Export.House == houseId).SelectMany(s => s.Source.Parts)];
        return parts.Length == 0 ? null : new Interval(Micros.ToInstant(parts.Min(p => p.First)), Micros.ToInstant(parts.Max(p => p.Last)));
    }

    /// <summary>What the ledger tells of that which <see cref="Load"/> would give; reads no data.</summary>
    /// <param name="house">The house.</param>
    /// <param name="period">The period under review.</param>
    /// <param name="runIn">As for <see cref="Load"/>.</param>
    /// <param name="history">Likewise.</param>
    public InputTrace TraceOf(HouseSettings house, Interval period, Duration runIn, Duration history)
    {
        ArgumentNullException.ThrowIfNull(house);
        return (_trace ??= new StoreTrace(_nursery, Index)).Of(house, period, runIn, history);
    }

    /// <summary>All that a review of one house period looks at.</summary>
    /// <param name="house">The house.</param>
    /// <param name="period">The period under review.</param>
    /// <param name="runIn">How much before it is loaded as well.</param>
    /// <param name="history">How much before it goes into <see cref="HouseInput.History"/>; zero: none.</param>
    public HouseInput Load(HouseSettings house, Interval period, Duration runIn, Duration history = default)
    {
        ArgumentNullException.ThrowIfNull(house);
        for (HashSet<string> healed = []; ;)
        {
            try
            {
                return new StoreQuery(_nursery, Index, _cache, _earlier).Load(house, period, runIn, history);
            }
            catch (DamagedPartException e) when (_readsOnly)
            {
                throw new StoreUnavailableException($"{e.Path} of the store {_folder} is missing or damaged; an import mends that.", e);
            }
            catch (DamagedPartException e) when (healed.Add(e.Path))
            {
                Heal(e);
            }
        }
    }

    /// <summary>What was told since it was last asked for when parts that turned out damaged were built again.</summary>
    public ImmutableArray<Problem> TakeHealed()
    {
        ImmutableArray<Problem> told = _healed.ToImmutable();
        _healed = new ProblemList();
        return told;
    }

    /// <summary>Gives the store free.</summary>
    public void Dispose() => _lock.Dispose();

    private LedgerIndex Index => _index ??= new LedgerIndex(_nursery, _ledger);

    /// <summary>Builds the source of a damaged part again from its files.</summary>
    private void Heal(DamagedPartException damage)
    {
        ExportSettings export = _nursery.Exports.First(e => Index.SourceOf(e)?.Parts.Exists(p => p.Stored.Path == damage.Path) == true);
        List<ExportFile> files = new ExportFiles(_nurseryFolder, _nursery).Of(export, _nursery.FileName, _healed);
        Change((transaction, change) =>
        {
            var update = new SourceUpdate(_nursery, export, _reader, transaction, _limits, _healed, null);
            change.Take(update.Rebuild(Index.SourceOf(export)!, files, damage.Path), update.Obsolete);
        });
    }

    private void Change(Action<StoreTransaction, LedgerChange> work)
    {
        try
        {
            using var transaction = new StoreTransaction(_folder, _disk);
            LedgerChange change = new();
            work(transaction, change);
            if (change.Count > 0)
            {
                Ledger ledger = change.Of(_ledger);
                transaction.Commit(ledger);
                _ledger = ledger;
                (_index, _trace, _version) = (null, null, null);
                _cache.Clear();
                _earlier.Clear();
            }
        }
        catch (Exception e) when (e is IOException and not StoreUnavailableException or UnauthorizedAccessException)
        {
            throw Unavailable(_folder, e);
        }
    }

    private static StoreUnavailableException Unavailable(string folder, Exception e)
        => new($"The store folder {folder} cannot be written or read: {e.Message}", e);
}
