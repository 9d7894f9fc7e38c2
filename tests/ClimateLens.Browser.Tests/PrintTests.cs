using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ClimateLens.Browser.Tests;

[Collection(SiteCollection.Name)]
public partial class PrintTests(SampleSite site)
{
    private const double PixelsAMillimetre = 96 / 25.4;
    private const double Margins = 24; // left and right, as the style sheet says [mm]

    [Theory]
    [InlineData("A4", 210.0, 595.3, 841.9)]
    [InlineData("Letter", 215.9, 612.0, 792.0)]
    public async Task Print_Paper_FitsItsWidthOnFewPages(string format, double widthMm, double widthPoints, double heightPoints)
    {
        int printable = (int)((widthMm - Margins) * PixelsAMillimetre);
        await using OpenPage open = await site.Open(site.Rich, 1280);
        byte[] pdf = await open.Page.PdfAsync(new PagePdfOptions { Format = format, PrintBackground = true });
        string text = Encoding.Latin1.GetString(pdf);
        Assert.InRange(PageObjects().Count(text), 3, 9); // the fullest week, with pots, scouting and the night to come
        Assert.All(Boxes().Matches(text).Cast<Match>(), box =>
        {
            Assert.Equal(widthPoints, Number(box.Groups[1]), 1.0);
            Assert.Equal(heightPoints, Number(box.Groups[2]), 1.0);
        });
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await open.Page.SetViewportSizeAsync(printable, 1000);
        await open.Page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
        Assert.Equal(printable, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        Assert.Equal("", await open.Page.EvaluateAsync<string>(TooWide, printable));
    }

    [Theory]
    [InlineData("en", "A4")]
    [InlineData("es", "A4")]
    [InlineData("nl", "A4")]
    [InlineData("en", "Letter")]
    [InlineData("es", "Letter")]
    [InlineData("nl", "Letter")]
    public async Task Print_PageForTheWall_IsOneSide(string language, string format)
    {
        await using OpenPage open = await site.Open(site.In(language, "wall.html"), 1280);
        byte[] pdf = await open.Page.PdfAsync(new PagePdfOptions { Format = format, PrintBackground = true });
        Assert.Equal(1, PageObjects().Count(Encoding.Latin1.GetString(pdf)));
    }

    [Fact]
    public async Task Print_Tables_AreThereAndTheHourlyOneNamesItsFile()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        foreach (string table in (string[])["#calendar table", "#waterings table", "#sensors table", "#records table", "#methods table", "#provenance table"])
        {
            Assert.True(await open.Page.Locator(table).First.IsVisibleAsync(), table);
        }

        Assert.False(await open.Page.Locator("#hours table").IsVisibleAsync());
        Assert.True(await open.Page.GetByText("it stands in hours.csv beside this page").IsVisibleAsync());
        Assert.Equal("table-header-group", await open.Page.EvaluateAsync<string>("getComputedStyle(document.querySelector('#waterings thead')).display"));
    }

    [Fact]
    public async Task Print_Folds_OpenForPaperAndCloseAgain()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        await open.Page.EvaluateAsync("window.dispatchEvent(new Event('beforeprint'))");
        Assert.Equal(0, await open.Page.Locator("details:not(.screen):not([open])").CountAsync());
        Assert.Equal(660, await open.Page.EvaluateAsync<int>("document.querySelector('#chart-air svg').clientWidth"));
        await open.Page.EvaluateAsync("window.dispatchEvent(new Event('afterprint'))");
        Assert.Equal(0, await open.Page.Locator("details[open]").CountAsync());
        await open.WaitUntil("document.querySelector('#chart-air svg').clientWidth > 900");
    }

    private const string TooWide =
        """
        width => [...document.querySelectorAll('main table, main svg.main-svg, main p')]
          .filter(e => e.getClientRects().length > 0 && e.getBoundingClientRect().right > width + 1)
          .map(e => e.outerHTML.slice(0, 80)).join('\n')
        """;

    private static double Number(Group group) => double.Parse(group.Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PageObjects();

    [GeneratedRegex(@"/MediaBox\s*\[\s*0\s+0\s+([0-9.]+)\s+([0-9.]+)\s*\]")]
    private static partial Regex Boxes();
}
