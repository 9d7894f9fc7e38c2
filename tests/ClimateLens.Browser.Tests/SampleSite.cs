using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports;
using ClimateLens.Reports.Cells;
using ClimateLens.TestKit;
using Microsoft.Playwright;

namespace ClimateLens.Browser.Tests;

/// <summary>A published sample site and a browser to look at it with, shared by all tests of the project.</summary>
public sealed class SampleSite : IAsyncLifetime, IDisposable
{
    private const string PathVariable = "CHROMIUM_PATH";

    private static readonly string[] Arguments =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private readonly TemporaryFolder _folder = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public string Index => Address("index.html");

    public string Compare { get; private set; } = "";

    /// <summary>Address of a page of the rich week by its file name.</summary>
    public string RichPage(string file) => Address($"house-1/2025-W43/{file}");

    public string Season => Address("house-1/season.html");

    /// <summary>Address of a page of the rich week in a language.</summary>
    public string In(string language, string file) => Address($"{language}/house-1/2025-W43/{file}");

    public string Failing => Address("failing/house-1/2025-W43/index.html");

    public string Rich => Address("house-1/2025-W43/index.html");

    public string Empty => Address("house-2/2025-W43/index.html");

    public string Hostile => Address("house-3/2025-W42/index.html");

    /// <summary>A text that breaks pages which do not encode it, and has no place to wrap.</summary>
    public static string HostileName => "<script>throw 1</script><img src=x onerror=alert(1)>\u202E\"'" + new string('W', 160);

    public async Task InitializeAsync()
    {
        SitePublisher publisher = new(_folder.Path, new PageOptions(UnitSystem.Metric));
        publisher.Publish(SampleReviews.Rich("2025-W43"));
        publisher.Publish(SampleReviews.Rich("2025-W42"));
        publisher.Publish(SampleReviews.Empty());
        publisher.Publish(SampleReviews.Rich("2025-W42", "3", HostileName));
        Compare = new Uri(publisher.PublishComparison(SampleReviews.Rich("2025-W42"), SampleReviews.Rich("2025-W42", "3", HostileName)).IndexHtml).AbsoluteUri;
        publisher.Complete("sample");
        foreach (string code in Language.Codes)
        {
            Assert.True(Language.TryGet(code, out Language? language));
            SitePublisher other = new(_folder.PathOf(code), new PageOptions(code == "es" ? UnitSystem.Us : UnitSystem.Metric) { Language = language, SingleFile = true });
            other.Publish(SampleReviews.Rich("2025-W43"));
            other.Complete(code);
        }

        new SitePublisher(_folder.PathOf("failing"), new PageOptions(UnitSystem.Metric), [new WeekInBriefCell(), new FailingCell(), new RiskCalendarCell()]).Publish(SampleReviews.Rich("2025-W43"));
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium(), Args = Arguments });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>Opens a page and waits until its charts are drawn; collects what the browser complains of and asks for.</summary>
    public async Task<OpenPage> Open(string address, int width, bool script = true, bool dark = false)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = width < 600 ? 740 : 900 },
            JavaScriptEnabled = script,
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
        });
        OpenPage page = new(await context.NewPageAsync());
        await page.Load(address, script);
        return page;
    }

    private static string Chromium()
    {
        string path = Environment.GetEnvironmentVariable(PathVariable) is { Length: > 0 } given ? given : "/usr/bin/chromium";
        return File.Exists(path)
            ? path
            : throw new InvalidOperationException($"The browser tests need Chromium and {path} does not exist. Install it with \"apt-get install chromium\", or set {PathVariable} to its executable.");
    }

    private string Address(string place) => new Uri(_folder.PathOf(place)).AbsoluteUri;
}

[CollectionDefinition(Name)]
public sealed class SiteCollection : ICollectionFixture<SampleSite>
{
    public const string Name = "site";
}

/// <summary>A cell that cannot be made.</summary>
internal sealed class FailingCell : IReportCell
{
    public string Name => "failing";

    public string Heading => "What fails?";

    public CellContent Render(CellContext context) => throw new InvalidOperationException("made to fail");
}
