using Microsoft.Playwright;

namespace ClimateLens.Browser.Tests;

[Collection(SiteCollection.Name)]
public class HouseWeekPageTests(SampleSite site)
{
    private const string PointsOfLines =
        "id => document.getElementById(id).calcdata.map(points => points.length)";

    public static TheoryData<string, int> PagesAndWidths
    {
        get
        {
            TheoryData<string, int> data = [];
            foreach (string page in (string[])["rich", "empty", "hostile", "index", "compare", "season", "sensors", "validation", "wall", "es", "nl", "single", "failing"])
            {
                data.Add(page, 1280);
                data.Add(page, 360);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task Page_AnyKindAndWidth_IsQuietLocalAndFits(string kind, int width)
    {
        await using OpenPage open = await site.Open(AddressOf(kind), width);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.RequestsElsewhere);
        Assert.Equal(width, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task Charts_RichPage_DrawOnePointAnHourAndOneMarkAWatering()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        Assert.Equal("2", await open.Page.EvaluateAsync<string>("document.documentElement.dataset.charts"));
        int[] air = await open.Page.EvaluateAsync<int[]>(PointsOfLines, "chart-air");
        int[] margin = await open.Page.EvaluateAsync<int[]>(PointsOfLines, "chart-margin");
        Assert.Equal([169, 169, 169, 169, 6], air[..5]);
        Assert.Equal([169, 6], margin);
        Assert.Equal(4, await open.Page.Locator("#chart-air .scatterlayer .trace:has(path.js-line)").CountAsync());
    }

    [Fact]
    public async Task Charts_GapInTheData_BreaksTheLine()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        Assert.Equal(2, await open.Page.Locator("#chart-margin .scatterlayer .trace path.js-line").CountAsync());
    }

    [Fact]
    public async Task Charts_Figures_HaveNoToolsNoLinkAndATextAlternative()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        Assert.Equal(0, await open.Page.Locator(".modebar-btn, .plotlyjsicon").CountAsync());
        ILocator images = open.Page.Locator("[role=img]");
        Assert.Equal(2, await images.CountAsync());
        Assert.Contains("Relative humidity averaged", (await images.First.GetAttributeAsync("aria-label"))!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task HourlyTable_Opened_ShowsEveryHour()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        ILocator rows = open.Page.Locator("#hours tbody tr");
        Assert.False(await rows.First.IsVisibleAsync());
        await open.Page.GetByText("Show all 169 hours").ClickAsync();
        Assert.True(await rows.First.IsVisibleAsync());
        Assert.Equal(169, await rows.CountAsync());
    }

    [Fact]
    public async Task FirstScreen_Phone_HoldsSentenceAndThreeNumbers()
    {
        await using OpenPage open = await site.Open(site.Rich, 360);
        LocatorBoundingBoxResult box = (await open.Page.Locator("#brief .numbers").BoundingBoxAsync())!;
        Assert.True(box.Y + box.Height < 740, $"the three numbers end at {box.Y + box.Height} px");
        Assert.Equal(3, await open.Page.Locator("#brief .numbers dt").CountAsync());
    }

    [Fact]
    public async Task FirstScreen_Desktop_HoldsTheFirstAdvice()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        LocatorBoundingBoxResult box = (await open.Page.Locator("#finding-1 .do").BoundingBoxAsync())!;
        Assert.True(box.Y + box.Height < 900, $"the first advice ends at {box.Y + box.Height} px");
    }

    [Fact]
    public async Task Page_WithoutScript_StillTellsTheWeek()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280, script: false);
        Assert.True(await open.Page.Locator("#calendar table.calendar").IsVisibleAsync());
        Assert.True(await open.Page.Locator("#brief .said").IsVisibleAsync());
        Assert.False(await open.Page.Locator("#chart-air").IsVisibleAsync());
        Assert.True(await open.Page.GetByText("The chart needs JavaScript").First.IsVisibleAsync());
    }

    [Fact]
    public async Task ScrollRegions_Keyboard_CanBeReachedAndNamed()
    {
        await using OpenPage open = await site.Open(site.Rich, 360);
        ILocator region = open.Page.GetByRole(AriaRole.Region, new PageGetByRoleOptions { Name = "Risk calendar, scrolls sideways" });
        await region.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await open.WaitUntil("document.activeElement.scrollLeft > 0");
    }

    [Fact]
    public async Task Index_Link_LeadsToThePageAndBack()
    {
        await using OpenPage open = await site.Open(site.Index, 1280);
        await open.Page.Locator("a[href='house-1/2025-W43/index.html']").ClickAsync();
        Assert.Equal("House 1, week 43 of 2025", await open.Page.Locator("h1").InnerTextAsync());
        await open.Page.GetByText("All houses and weeks").ClickAsync();
        Assert.Contains("risk hours by house and week", await open.Page.Locator("h1").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fold_BelowACell_HoldsMethodSourceErrorDataAndQueries()
    {
        await using OpenPage open = await site.Open(site.Rich, 1280);
        ILocator fold = open.Page.Locator("#air > .how");
        Assert.False(await fold.Locator("dl").IsVisibleAsync());
        await fold.Locator("summary").ClickAsync();
        Assert.Equal(["Method", "Source", "Error and range", "Data (SI units)", "The readings behind it, from the store"], await fold.Locator("dt").AllInnerTextsAsync());
        Assert.Contains("read_parquet", await fold.Locator("pre").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("import pandas", await fold.Locator("pre").Last.InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FailingCell_SaysSoInItsPlace_AndTheRestStands()
    {
        await using OpenPage open = await site.Open(site.Failing, 1280);
        Assert.Contains("could not be made", await open.Page.Locator("#failing .failed").InnerTextAsync(), StringComparison.Ordinal);
        Assert.True(await open.Page.Locator("#calendar table").IsVisibleAsync());
    }

    [Theory]
    [InlineData("en", "41", "Mon 20", "18.0", "°C")]
    [InlineData("es", "41", "lun 20", ",", "°F")]
    [InlineData("nl", "41", "ma 20", ",", "°C")]
    public async Task Language_PageInEach_HasItsWeekdaysMarksAndUnits(string language, string riskHours, string day, string mark, string unit)
    {
        await using OpenPage open = await site.Open(site.In(language, "index.html"), 1280);
        Assert.Equal(language, await open.Page.EvaluateAsync<string>("document.documentElement.lang"));
        Assert.NotEqual("", riskHours);
        Assert.Contains(day, await open.Page.Locator("#calendar tbody").InnerTextAsync(), StringComparison.Ordinal);
        string said = await open.Page.Locator("#air .said").InnerTextAsync();
        Assert.Contains(mark == "18.0" ? "." : mark, said, StringComparison.Ordinal);
        Assert.Contains(unit, said, StringComparison.Ordinal);
        Assert.Equal(mark == "18.0" ? ".," : mark == "," && language == "nl" ? ",." : ",\u00A0", await open.Page.EvaluateAsync<string>("document.getElementById('chart-air').layout.separators"));
    }

    [Fact]
    public async Task SingleFile_AloneInAFolder_DrawsItsChartsAndHoldsItsData()
    {
        string alone = Path.Combine(Directory.CreateTempSubdirectory("climatelens-single-").FullName, "week.html");
        File.Copy(new Uri(site.In("en", "index.single.html")).LocalPath, alone);
        await using OpenPage open = await site.Open(new Uri(alone).AbsoluteUri, 1280);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.RequestsElsewhere);
        Assert.Equal("2", await open.Page.EvaluateAsync<string>("document.documentElement.dataset.charts"));
        Assert.StartsWith("data:text/csv;base64,", await open.Page.Locator("a[download='hours.csv']").First.GetAttributeAsync("href"), StringComparison.Ordinal);
        Assert.Equal(0, await open.Page.Locator("a[href^='..'], link[href*='/'], script[src]").CountAsync());
        Directory.Delete(Path.GetDirectoryName(alone)!, recursive: true);
    }

    private string AddressOf(string kind) => Pages.AddressOf(site, kind);
}
