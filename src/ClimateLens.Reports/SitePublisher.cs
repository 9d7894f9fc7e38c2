using System.Collections.Immutable;
using System.Text;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Formats;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports;

/// <summary>
/// The only writer of a site. A page's files are written beside their places and then renamed one by one, index.html
/// last; a run that is killed leaves each file old or new, and a page that it had begun is made again. One publisher at
/// a time may work on a site (the store's lock sees to that); its methods may be called from several threads.
/// Throws <see cref="SiteUnavailableException"/> when the folder cannot be written or read.
/// </summary>
public sealed class SitePublisher
{
    /// <summary>As many files of a page are written side by side.</summary>
    public const int FilesAtOnce = 16;

    private const string StatePlace = "site.json";
    private const string IndexPlace = "index.html";
    private const string FeedPlace = "feed.xml";
    private const string LatestPlace = "latest.json";
    private const string BegunName = ".begun";
    private readonly Lock _lock = new();
    private readonly SiteFolder _site;
    private readonly PageOptions _options;
    private readonly PageSet _pages;
    private readonly string _maker, _reviewMaker, _siteMaker;
    private readonly Dictionary<(string House, string Period), SiteEntry> _entries = [];
    private ImmutableArray<SiteEntry> _completed; // pages when the site was last complete
    private bool _assetsReady;

    /// <summary>Opens a site, new or existing.</summary>
    /// <param name="siteFolder">Its folder; made when it does not exist.</param>
    /// <param name="options">How pages are to read.</param>
    public SitePublisher(string siteFolder, PageOptions options)
        : this(siteFolder, options, (IReadOnlyList<IReportCell>?)null)
    {
    }

    /// <summary>Opens a site in which each house and week has one page, of these cells.</summary>
    /// <param name="siteFolder">Its folder.</param>
    /// <param name="options">How pages are to read.</param>
    /// <param name="cells">The parts of a page, in order; null for the notebooks of the options.</param>
    public SitePublisher(string siteFolder, PageOptions options, IReadOnlyList<IReportCell>? cells)
        : this(Opened(siteFolder, options), options, cells, null)
    {
    }

    /// <summary>Opens the site for one page, beside others that do the same.</summary>
    internal SitePublisher(SiteFolder site, PageOptions options, string folder)
        : this(site, options, null, folder)
    {
    }

    /// <summary>Opens a site on a disk of the caller's.</summary>
    internal SitePublisher(string siteFolder, PageOptions options, SiteDisk disk)
        : this(new SiteFolder(siteFolder, disk), options, null, null)
    {
    }

    private SitePublisher(SiteFolder site, PageOptions options, IReadOnlyList<IReportCell>? cells, string? only)
    {
        _site = site;
        _options = options;
        _pages = new PageSet(options, cells);
        _maker = Maker.OfPages(options);
        _reviewMaker = Maker.OfReviews(options);
        _siteMaker = Maker.OfSite(options);
        SiteState state = _site.Read(StatePlace) is { } json ? SiteState.Read(json) : SiteState.Empty;
        _completed = state.Entries;
        ImmutableArray<SiteEntry> noted = [.. (only is null ? _site.PageFolders() : [only]).Select(f => PageNote.Read(_site, f)).OfType<SiteEntry>()];
        foreach (SiteEntry entry in state.Entries.Concat(noted).Where(e => (only is null || e.Summary.Page == $"{only}/index.html") && IsThere(e.Summary.Page)))
        {
            _entries[(entry.Summary.House, entry.Summary.Period)] = entry; // a note is newer than the site's state
        }

        bool whole = noted.IsEmpty && state.Maker == _siteMaker && _entries.Count == state.Entries.Length && _site.Exists(IndexPlace) && _site.Exists(FeedPlace) && _site.Exists(LatestPlace) && SiteAssets.AreThere(_site) && !_entries.Values.Any(e => IsBegun(e.Summary.Page));
        RunKey = whole ? state.RunKey : null;
    }

    /// <summary>
    /// What the last complete run passed to <see cref="Complete"/>. Null for a new site, after a change of the program or
    /// of the options, and when a page of that run, its review.json or hours.csv, or a shared asset is gone: then there is something to do even if no input has changed.
    /// </summary>
    public string? RunKey { get; private set; }

    /// <summary>All published pages, newest period first, then houses in natural order of their ids.</summary>
    public IReadOnlyList<HouseWeekSummary> Summaries => [.. InOrder().Select(e => e.Summary)];

    /// <summary>
    /// Whether the page exists whole and was made from this input, by this program and with these options. False after a
    /// run that was killed while it wrote the page.
    /// </summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    /// <param name="inputHash">Hash of the input that a page made now would show.</param>
    public bool IsCurrent(string houseId, string periodName, string inputHash)
    {
        SiteEntry? entry;
        lock (_lock)
        {
            _entries.TryGetValue((houseId, periodName), out entry);
        }

        if (entry is null || entry.Maker != _maker || entry.Summary.InputHash != inputHash)
        {
            return false;
        }

        string folder = FolderOf(houseId, periodName);
        return !_site.Exists($"{folder}/{BegunName}") && _pages.Marks(inputHash).All(m => Bears($"{folder}/{m.File}", m.Mark) && _pages.FilesOf(m.File).All(f => _site.Exists($"{folder}/{f}")));
    }

    /// <summary>Hash of the input of a page's review, where the same analysis made it out of an input of this trace or found it to be as it would make it; else null.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    /// <param name="trace">What the store tells of the input.</param>
    public string? InputHashOf(string houseId, string periodName, string trace)
        => EntryOf(houseId, periodName) is { } entry && entry.ReviewMaker == _reviewMaker && entry.Trace.Length > 0 && entry.Trace == trace ? entry.Summary.InputHash : null;

    /// <summary>Whether anything is known of a page.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    public bool Knows(string houseId, string periodName) => EntryOf(houseId, periodName) is not null;

    /// <summary>Notes that the input of a page, which is current, now has another trace.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    /// <param name="trace">What the store tells of the input.</param>
    public void Retrace(string houseId, string periodName, string trace)
    {
        lock (_lock)
        {
            _entries[(houseId, periodName)] = _entries[(houseId, periodName)] with { Trace = trace };
        }
    }

    /// <summary>
    /// The review behind a page, where it was made from this input by the same analysis: its pages can then be made again without another review,
    /// after a change of a notebook, of the options or of the pages' code. Null otherwise.
    /// </summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    /// <param name="inputHash">Hash of the input that a review made now would have.</param>
    public Review? ReviewOf(string houseId, string periodName, string inputHash)
        => EntryOf(houseId, periodName) is { } entry && entry.ReviewMaker == _reviewMaker && entry.Summary.InputHash == inputHash
            && EntryOfReview.ReadReview(_site, FolderOf(houseId, periodName)) is { } review && review.Provenance.InputHash == inputHash ? review : null;

    /// <summary>The first screen of a page to send by mail, with the page as one file; null where the page or its review is not there.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    public WeekLetter? LetterOf(string houseId, string periodName)
    {
        using Language.Scope language = _options.Language.Use();
        string folder = FolderOf(houseId, periodName);
        return EntryOfReview.ReadReview(_site, folder) is { } review && _site.Read($"{folder}/index.html") is { } page
            ? WeekLetter.Of(review, new DisplayUnits(_options.Units), $"house-{houseId}-{periodName}.html", Encoding.UTF8.GetBytes(SingleFile.Of(Encoding.UTF8.GetString(page), DataFiles.Of(review))))
            : null;
    }

    private bool Bears(string place, string mark) => PageMark.Bears(Encoding.UTF8.GetString(_site.ReadStart(place, PageMark.WithinBytes)), mark);

    /// <summary>
    /// Takes up the pages that stand in the site and are not known, or of which something older is known: out of their review.json. Which program
    /// made them is not known then, so the next run makes them again.
    /// </summary>
    public void TakeUpPages()
    {
        HashSet<string> known = [.. _entries.Values.Where(e => IsKnown(e)).Select(e => e.Summary.Page)];
        foreach (string folder in _site.PageFolders().Where(f => !known.Contains($"{f}/index.html") && IsThere($"{f}/index.html") && !IsBegun($"{f}/index.html")))
        {
            if (EntryOfReview.Read(_site, folder) is { } entry && EntryOf(entry.Summary.House, entry.Summary.Period)?.Summary.InputHash != entry.Summary.InputHash)
            {
                _entries[(entry.Summary.House, entry.Summary.Period)] = entry;
            }
        }
    }

    /// <summary>Makes a review's page and data files and puts them in place, and behind them a note of what is known of the page until the site is complete.</summary>
    /// <param name="review">The review.</param>
    /// <param name="trace">What the store tells of its input; empty where that is not known.</param>
    public PublishedPage Publish(Review review, string trace = "")
    {
        ArgumentNullException.ThrowIfNull(review);
        using Language.Scope language = _options.Language.Use();
        string period = PeriodWords.FolderName(review.Period);
        string folder = FolderOf(review.House.Id, period);
        ImmutableSortedDictionary<string, byte[]> data = DataFiles.Of(review);
        Review written = ReviewJson.Read(data[DataFiles.Review]); // pages show what review.json says, now and when they are made from it again
        SiteEntry? old = EntryOf(review.House.Id, period);
        bool alike = Stands($"{folder}/{DataFiles.Review}", data[DataFiles.Review]) && old?.Maker == _maker && old.ReviewMaker == _reviewMaker && old.Summary.InputHash == written.Provenance.InputHash && !IsBegun($"{folder}/index.html");
        HashSet<string> standing = alike ? [.. _pages.Marks(written.Provenance.InputHash).Where(m => Bears($"{folder}/{m.File}", m.Mark)).Select(m => m.File)] : [];
        ImmutableArray<(string File, RenderedPage Page)> pages = _pages.Render(written, data, standing);
        HashSet<string> kept = [.. standing.Concat(pages.Select(p => p.File)).SelectMany(_pages.FilesOf)];
        List<(string Place, ReadOnlyMemory<byte> Content)> files =
        [
            .. data.Select(f => ($"{folder}/{f.Key}", (ReadOnlyMemory<byte>)f.Value)).Where(f => !alike || !Stands(f.Item1, f.Item2)),
            .. _pages.Written(folder, pages, data),
        ];
        EnsureAssets();
        _site.Write($"{folder}/{BegunName}", ReadOnlyMemory<byte>.Empty);
        foreach (string gone in DataFiles.Names.Where(n => !data.ContainsKey(n)).Concat(_site.Names(folder, ".html").Concat(_site.Names(folder, PageSet.IpynbEnding)).Where(n => !kept.Contains(n))))
        {
            _site.Delete($"{folder}/{gone}");
        }

        if (files.Count > 0)
        {
            _site.WriteAll(files);
        }

        _site.Delete($"{folder}/{BegunName}");
        SiteEntry entry = EntryOfReview.Of(written, folder);
        HouseWeekSummary summary = entry.Summary;
        entry = entry with { Maker = _maker, ReviewMaker = _reviewMaker, Trace = trace, Was = Was(old, summary) };
        lock (_lock)
        {
            _entries[(summary.House, summary.Period)] = entry;
        }

        PageNote.Write(_site, folder, entry); // a run that is killed has not worked for nothing

        return new PublishedPage(summary, _site.PathOf(summary.Page), FailedCells(pages));
    }

    /// <summary>Makes the pages that hold two reviews side by side, with comparison.json and nights.csv beside them, and puts them in place.</summary>
    /// <param name="first">One review.</param>
    /// <param name="second">The other; its period has as many hours.</param>
    public PublishedComparison PublishComparison(Review first, Review second)
    {
        using Language.Scope language = _options.Language.Use();
        ComparisonReport report = HousesCompared.Of(first, second);
        string one = FolderOf(first.House.Id, PeriodWords.FolderName(first.Period)), two = FolderOf(second.House.Id, PeriodWords.FolderName(second.Period));
        string folder = $"compare/{one.Replace('/', '_')}_{(first.House.Nursery == second.House.Nursery ? "" : "other-")}{two.Replace('/', '_')}";
        DisplayUnits units = new(_options.Units);
        ImmutableArray<(string File, RenderedPage Page)> pages = [.. _options.Notebooks.For(NotebookKind.HousesWeek).Select(n => (n.PageName, ComparePage.Render(report, first, second, units, n)))];
        Dictionary<string, byte[]> data = new(StringComparer.Ordinal)
        {
            ["comparison.json"] = CompareJson.Write(report),
            ["nights.csv"] = CompareTables.Nights(report),
            ["differences.csv"] = CompareTables.Differences(report),
        };
        EnsureAssets();
        _site.WriteAll(
        [
            .. data.Select(f => ($"{folder}/{f.Key}", (ReadOnlyMemory<byte>)f.Value)),
            .. _pages.Written(folder, pages, data),
        ]);
        return new PublishedComparison(_site.PathOf($"{folder}/index.html"), FailedCells(pages)) { Report = report };
    }

    /// <summary>Writes the site's index and, last, its state: from now on <see cref="RunKey"/> is the given one.</summary>
    /// <param name="runKey">Stands for all that this run has seen.</param>
    public void Complete(string runKey)
    {
        ArgumentNullException.ThrowIfNull(runKey);
        using Language.Scope language = _options.Language.Use();
        EnsureAssets();
        ImmutableArray<SiteEntry> entries = InOrder();
        WriteSeasons(entries);
        _site.Write(FeedPlace, Feed.Write(entries));
        _site.Write(LatestPlace, Latest.Write(entries));
        _site.Write(IndexPlace, Encoding.UTF8.GetBytes(IndexPage.Render(entries, SiteChange.Between(_completed, entries))));
        _site.Write(StatePlace, new SiteState(SiteState.CurrentVersion, runKey, _siteMaker, entries).Write());
        foreach (SiteEntry entry in entries)
        {
            PageNote.Remove(_site, FolderOf(entry.Summary.House, entry.Summary.Period));
        }

        _completed = entries;
        RunKey = runKey;
    }

    private static ImmutableArray<string> FailedCells(ImmutableArray<(string File, RenderedPage Page)> pages) => [.. pages.SelectMany(p => p.Page.FailedCells).Distinct()];

    /// <summary>The pages of each house over all its weeks.</summary>
    private void WriteSeasons(ImmutableArray<SiteEntry> entries)
    {
        if (_pages.IsOfCells)
        {
            return;
        }

        DisplayUnits units = new(_options.Units);
        foreach (IGrouping<string, SiteEntry> house in entries.GroupBy(e => e.Summary.House))
        {
            foreach (Notebook notebook in _options.Notebooks.For(NotebookKind.HouseSeason))
            {
                byte[] page = Encoding.UTF8.GetBytes(SeasonPage.Render([.. house.Reverse()], units, notebook).Html);
                string place = $"house-{house.Key}/{notebook.Name}.html";
                if (_site.Read(place) is not { } old || !old.AsSpan().SequenceEqual(page))
                {
                    _site.Write(place, page);
                }
            }
        }
    }

    private bool Stands(string place, ReadOnlyMemory<byte> content) => _site.Read(place) is { } present && present.AsSpan().SequenceEqual(content.Span);

    /// <summary>What the page told before its data or settings changed; a change of the program is none.</summary>
    private double? Was(SiteEntry? old, HouseWeekSummary summary)
        => old is null || old.Maker != _maker ? null
            : old.Summary.InputHash == summary.InputHash || old.Summary.RiskHours == summary.RiskHours ? old.Was
            : old.Summary.RiskHours;

    /// <summary>Whether a page stands with the data files that every page has.</summary>
    private bool IsThere(string page)
    {
        string folder = page[..page.LastIndexOf('/')];
        return _site.Exists(page) && _site.Exists($"{folder}/{DataFiles.Review}") && _site.Exists($"{folder}/{DataFiles.Hours}");
    }

    /// <summary>What is known of a page, or null.</summary>
    internal SiteEntry? EntryOf(string houseId, string periodName)
    {
        lock (_lock)
        {
            return _entries.GetValueOrDefault((houseId, periodName));
        }
    }

    /// <summary>Whether the pages that stand bear the mark of what is known of them: then their review, a large file, need not be read.</summary>
    private bool IsKnown(SiteEntry entry)
    {
        string folder = FolderOf(entry.Summary.House, entry.Summary.Period);
        return _pages.Marks(entry.Summary.InputHash).All(m => Bears($"{folder}/{m.File}", m.Mark));
    }

    private bool IsBegun(string page) => _site.Exists($"{page[..page.LastIndexOf('/')]}/{BegunName}");

    private static SiteFolder Opened(string siteFolder, PageOptions options)
    {
        ArgumentException.ThrowIfNullOrEmpty(siteFolder);
        ArgumentNullException.ThrowIfNull(options);
        return new SiteFolder(siteFolder);
    }

    /// <summary>Place of a page in the site.</summary>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period.</param>
    public static string PlaceOf(string houseId, string periodName) => $"{FolderOf(houseId, periodName)}/index.html";

    /// <summary>Folder of a page in the site.</summary>
    internal static string FolderOf(string houseId, string period)
    {
        foreach (string part in (string[])[houseId, period])
        {
            if (part.Length == 0 || part.Any(c => !char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_')))
            {
                throw new ArgumentException($"\"{part}\" cannot be part of a folder's name: letters, digits, '-' and '_' can.", nameof(houseId));
            }
        }

        return $"house-{houseId}/{period}";
    }

    private ImmutableArray<SiteEntry> InOrder()
    {
        lock (_lock)
        {
            return SiteState.InOrder(_entries.Values);
        }
    }

    private void EnsureAssets()
    {
        lock (_lock)
        {
            if (!_assetsReady)
            {
                SiteAssets.Ensure(_site);
                _assetsReady = true;
            }
        }
    }
}
