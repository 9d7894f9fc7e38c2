using Microsoft.Playwright;

// Takes the pictures of docs/images from a published site of the sample logs:
//   dotnet run --project tests/ClimateLens.Pictures -c Release -- reports/site docs/images
if (args.Length is < 2 or > 3)
{
    Console.Error.WriteLine("usage: SITE OUT [PAGE]   (PAGE: one page of the site, taken at all three widths)");
    return 64;
}

(string Name, string Page, int Width, int Height, Media Media)[] pictures = args.Length == 3
    ?
    [
        ("desktop", args[2], 1280, 0, Media.Screen),
        ("phone", args[2], 360, 0, Media.Screen),
        ("print", args[2], 703, 0, Media.Print),
    ]
    :
    [
        ("week", "house-1/2025-W42/index.html", 1100, 1180, Media.Screen),
        ("week-phone", "house-1/2025-W42/index.html", 360, 900, Media.Screen),
        ("week-print", "house-1/2025-W42/wall.html", 703, 1000, Media.Print),
        ("season", "house-1/season.html", 1100, 900, Media.Screen),
        ("index", "index.html", 1100, 700, Media.Screen),
    ];
Directory.CreateDirectory(args[1]);
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
{
    ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM_PATH") is { Length: > 0 } path ? path : "/usr/bin/chromium",
    Args = ["--headless", "--no-sandbox", "--disable-gpu"],
});
foreach ((string name, string place, int width, int height, Media media) in pictures)
{
    await using IBrowserContext context = await browser.NewContextAsync(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = width, Height = height == 0 ? 900 : height } });
    IPage page = await context.NewPageAsync();
    await page.GotoAsync(new Uri(Path.GetFullPath(Path.Combine(args[0], place))).AbsoluteUri);
    await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = media });
    if (media == Media.Print)
    {
        await page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
    }

    await page.WaitForTimeoutAsync(1500);
    await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(args[1], name + ".png"), FullPage = height == 0 });
    double paint = await page.EvaluateAsync<double>("(performance.getEntriesByName('first-contentful-paint')[0] || { startTime: -1 }).startTime");
    Console.WriteLine(FormattableString.Invariant($"{name}.png, first contentful paint after {paint:0} ms"));
}

return 0;
