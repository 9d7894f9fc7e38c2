using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public sealed class ComparePageTests
{
    [Fact]
    public void PublishComparison_TwoHouses_WritesPageAndData()
    {
        using TemporaryFolder site = new();
        Review first = SampleReviews.Rich(), second = SampleReviews.Rich(houseId: "2");
        second = second with { House = second.House with { Name = "<b>Two</b>" }, RiskHours = new Estimate(12, 4, 20), Hours = [.. second.Hours.Select((h, i) => h with { RelativeHumidityPct = h.RelativeHumidityPct - 6, Risk = h.Risk is null ? null : i % 9 == 0 })] };
        (string page, var failed) = new SitePublisher(site.Path, new PageOptions(UnitSystem.Us)).PublishComparison(first, second);
        Assert.Empty(failed);
        Assert.Equal(["comparison.json", "differences.csv", "index.html", "nights.csv"], Directory.GetFiles(Path.GetDirectoryName(page)!).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        string html = File.ReadAllText(page);
        Assert.Contains("risk hours more than", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;Two&lt;/b&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>Two</b>", html, StringComparison.Ordinal);
        Assert.Empty(Rendered.UnbalancedTags(html));
        Assert.All(Comparing.CompareCells.All, c => Assert.Contains($"<section id=\"{c.Name}\"", html, StringComparison.Ordinal));
        byte[] before = File.ReadAllBytes(page);
        new SitePublisher(site.Path, new PageOptions(UnitSystem.Us)).PublishComparison(first, second);
        Assert.Equal(before, File.ReadAllBytes(page));
    }

    [Fact]
    public void PublishComparison_NothingKnown_SaysSoEverywhere()
    {
        using TemporaryFolder site = new();
        Review empty = SampleReviews.Empty();
        (string page, var failed) = new SitePublisher(site.Path, new PageOptions(UnitSystem.Metric)).PublishComparison(empty, empty);
        Assert.Empty(failed);
        Assert.Contains("not known", File.ReadAllText(page), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("NaN", File.ReadAllText(page), StringComparison.Ordinal);
    }
}
