using System.Collections.Immutable;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using ClimateLens.Reports.Notebooks;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary>One run over one nursery: its settings, its open store and its publisher.</summary>
internal sealed class Session : IDisposable
{
    private const long LeastMemoryBytes = 48L << 20;

    private readonly Messages _messages;
    private readonly Language _language;
    private readonly string _formats;
    private readonly Lazy<SitePublisher> _site;
    private readonly Func<string, string, OnePagePublisher> _page;

    private Session(NurserySettings nursery, ReadingStore store, string siteFolder, PageOptions options, Messages messages)
    {
        Nursery = nursery;
        Store = store;
        _language = options.Language;
        _formats = $"{options.Ipynb} {options.SingleFile}";
        _site = new(() => new SitePublisher(siteFolder, options));
        _page = (house, period) => new OnePagePublisher(siteFolder, options, house, period);
        SiteIndex = Path.Combine(siteFolder, "index.html");
        Units = options.Units;
        _messages = messages;
        Report(nursery.Warnings);
        Report(options.Notebooks.Problems);
    }

    public NurserySettings Nursery { get; }

    public ReadingStore Store { get; }

    /// <summary>The site, opened when it is first asked for: an import makes no pages.</summary>
    public SitePublisher Site => _site.Value;

    public string SiteIndex { get; }

    public UnitSystem Units { get; }

    public ImmutableArray<Problem> Problems => [.. _messages.Told];

    /// <summary>Whether anything was lost: exit code 1.</summary>
    public bool AnythingLost => _messages.Told.Any(p => p.Severity != Severity.Note);

    /// <summary>Equal keys mean that a run would find nothing to do.</summary>
    public string RunKey => Digest.OfText(
        $"{Store.Version}\n{Nursery.ShortFileName}\n{Nursery.ContentHash}\n{Units}\n{_language.Code}\n{_formats}\n{CodeAccount.Of(typeof(Session).Assembly)}");

    /// <summary>Reads the nursery file and opens the store.</summary>
    public static Session Open(Request request, Messages messages) => Open(request, messages, ReadingStore.Open);

    /// <summary>As the usual opening, beside others who read the store; it takes in no files.</summary>
    public static Session OpenToRead(Request request, Messages messages) => Open(request, messages, (nursery, folder) => ReadingStore.Exists(nursery, folder)
        ? ReadingStore.OpenToRead(nursery, folder)
        : throw new NoDataException("nothing was imported yet: run the import, plan or run command first."));

    private static Session Open(Request request, Messages messages, Func<NurserySettings, string, ReadingStore> open)
    {
        NurserySettings nursery = NurseryFileReader.Read(request.NurseryPath);
        string folder = FolderOf(request.NurseryPath);
        string siteFolder = SiteFolderOf(request, nursery);
        PageOptions options = new(request.Units ?? nursery.Units)
        {
            Language = Language.TryGet(request.Language ?? nursery.Language, out Language? language) ? language : Language.English,
            Notebooks = NotebooksOf(nursery, request.NurseryPath),
            Store = nursery.Store,
            Ipynb = request.Ipynb,
            SingleFile = request.SingleFile,
        };
        return new Session(nursery, open(nursery, folder), siteFolder, options, messages);
    }

    /// <summary>
    /// Ends at once where the heap may not grow as far as any review needs (sample logs: 40 MiB are too few, 64 enough): where memory runs out in the middle, .NET itself was seen to crash.
    /// </summary>
    public static void NeedMemory()
    {
        if (GC.GetGCMemoryInfo().TotalAvailableMemoryBytes < LeastMemoryBytes)
        {
            throw new InsufficientMemoryException();
        }
    }

    /// <summary>As the usual opening, and opens the site: a folder that cannot be written is told before the work, not after it.</summary>
    public static Session OpenWithSite(Request request, Messages messages)
    {
        NeedMemory();
        Session session = Open(request, messages);
        try
        {
            _ = session.Site;
            return session;
        }
        catch
        {
            session.Dispose();
            throw;
        }
    }

    /// <summary>The house of an id.</summary>
    public HouseSettings HouseOf(string id) => Nursery.Houses.FirstOrDefault(h => h.Id == id)
        ?? throw new NoDataException($"there is no house \"{id}\"; the nursery file has {string.Join(", ", Nursery.Houses.Select(h => h.Id))}.");

    /// <summary>The notebooks of a nursery.</summary>
    public static NotebookFolder NotebooksOf(NurserySettings nursery, string nurseryPath)
        => NotebookFolder.Read(NotebooksFolder(nursery, nurseryPath), nursery.Notebooks.Length == 0 ? UsualNotebooks : nursery.Notebooks, isAsked: nursery.Notebooks.Length > 0);

    /// <summary>Their folder, full path.</summary>
    public static string NotebooksFolder(NurserySettings nursery, string nurseryPath)
        => Path.GetFullPath(Path.Combine(FolderOf(nurseryPath), nursery.Notebooks.Length == 0 ? UsualNotebooks : nursery.Notebooks));

    private const string UsualNotebooks = "notebooks";

    /// <summary>The folder against which a nursery file's paths are read.</summary>
    public static string FolderOf(string nurseryPath) => Path.GetDirectoryName(Path.GetFullPath(nurseryPath)) ?? ".";

    /// <summary>The folder of the pages, full path.</summary>
    public static string SiteFolderOf(Request request, NurserySettings nursery) => Path.GetFullPath(request.Out ?? Path.Combine(FolderOf(request.NurseryPath), nursery.Site));

    /// <summary>Imports what is new and tells what was set aside.</summary>
    public ImportReport Import()
    {
        ImportReport report = Store.Import(_messages.Progress);
        _messages.EndProgress();
        Report(report.Problems);
        return report;
    }

    /// <summary>What a review of a house period looks at; tells what was lost where a damaged part had to be built again for it.</summary>
    public HouseInput Load(HouseSettings house, Interval period, Duration runIn, Duration history = default)
    {
        HouseInput input = Store.Load(house, period, runIn, history);
        Report(Store.TakeHealed());
        return input;
    }

    /// <summary>The place of one page, for a run that makes no other.</summary>
    public OnePagePublisher PageOf(HouseSettings house, IsoWeek week) => _page(house.Id, week.ToString());

    /// <summary>Works out a review; what it says is in the language of the pages.</summary>
    public Review Review(HouseInput input)
    {
        using Language.Scope language = _language.Use();
        return ReviewPipeline.Run(input);
    }

    /// <summary>Hash of what a review looks at, and of its language.</summary>
    public string HashOf(HouseInput input)
    {
        using Language.Scope language = _language.Use();
        return InputFingerprint.Of(input);
    }

    /// <summary>Publishes a review's page and tells which of its parts failed.</summary>
    public PublishedPage Publish(Review review) => Told(Site.Publish(review));

    /// <summary>Tells which parts of a page failed.</summary>
    public PublishedPage Told(PublishedPage page)
    {
        Report([.. page.FailedCells.Select(cell => new Problem("report.cell", Severity.Warning, null, null, null,
            $"{page.Summary.HouseName}, {page.Summary.Period}: the part \"{cell}\" of the page could not be made", "", "The page says so in its place; the rest stands."))]);
        return page;
    }

    /// <summary>Keeps and shows problems.</summary>
    public void Report(IReadOnlyList<Problem> problems) => _messages.Problems(problems);

    public void Dispose() => Store.Dispose();
}
