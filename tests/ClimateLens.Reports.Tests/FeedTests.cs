using System.Text.Json;
using System.Xml.Linq;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>What others may build on beside the pages: feed, latest.json, and what a page told before its data or settings changed.</summary>
public sealed class FeedTests : IDisposable
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Feed_HasEachPageNewestFirst_WithWhatEveryAtomEntryNeeds()
    {
        Complete(SampleReviews.Rich("2025-W41"), SampleReviews.Rich("2025-W42", houseName: "<One> & \u0001two"));
        XElement feed = XDocument.Parse(File.ReadAllText(Path.Combine(_folder.Path, "feed.xml"))).Root!;
        XElement[] entries = [.. feed.Elements(Atom + "entry")];
        Assert.Equal(["house-1/2025-W42/index.html", "house-1/2025-W41/index.html"], entries.Select(e => e.Element(Atom + "link")!.Attribute("href")!.Value));
        Assert.StartsWith("<One> & two, week 42 of 2025", entries[0].Element(Atom + "title")!.Value, StringComparison.Ordinal);
        Assert.All(entries.Append(feed), e => // RFC 4287, sections 4.1.1 and 4.1.2
        {
            Assert.NotEmpty(e.Element(Atom + "id")!.Value);
            Assert.NotEmpty(e.Element(Atom + "title")!.Value);
            Assert.True(DateTimeOffset.TryParse(e.Element(Atom + "updated")!.Value, out _));
        });
        Assert.Equal(entries.Length, entries.Select(e => e.Element(Atom + "id")!.Value).Distinct().Count());
    }

    [Fact]
    public void Latest_HasTheNewestPageOfEachHouse()
    {
        Complete(SampleReviews.Rich("2025-W41"), SampleReviews.Rich("2025-W42"), SampleReviews.Empty("2025-W43", "2"));
        JsonElement[] houses = [.. JsonDocument.Parse(File.ReadAllBytes(Path.Combine(_folder.Path, "latest.json"))).RootElement.GetProperty("houses").EnumerateArray()];
        Assert.Equal(["1 2025-W42", "2 2025-W43"], houses.Select(h => $"{h.GetProperty("house")} {h.GetProperty("period")}"));
        Assert.True(houses[0].GetProperty("riskHours").GetProperty("value").GetDouble() > 0);
        Assert.Equal(JsonValueKind.Null, houses[1].GetProperty("riskHours").ValueKind);
    }

    [Fact]
    public void Index_PageThatLateDataChanged_TellsWhatItToldBefore_AndSaysItAgainTheSameWay()
    {
        Review before = SampleReviews.Rich();
        Complete(before);
        Review after = before with { RiskHours = new Estimate(77, 50, 90), Provenance = before.Provenance with { InputHash = new string('a', 64) } };
        Complete(after);
        string index = File.ReadAllText(Path.Combine(_folder.Path, "index.html"));
        Assert.Contains($"was {before.RiskHours!.Value:0} before its data or settings changed", index, StringComparison.Ordinal);
        Assert.Contains("Since the run before", index, StringComparison.Ordinal);
        Complete(after);
        string again = File.ReadAllText(Path.Combine(_folder.Path, "index.html"));
        Assert.Contains($"was {before.RiskHours!.Value:0} before its data or settings changed", again, StringComparison.Ordinal);
        Assert.DoesNotContain("Since the run before", again, StringComparison.Ordinal); // the run before was that one, and nothing changed
        Complete(after);
        Assert.Equal(again, File.ReadAllText(Path.Combine(_folder.Path, "index.html")));
    }

    [Fact]
    public void Season_TellsOfEveryWeekOldestFirst_AndLinksResolve()
    {
        Complete(SampleReviews.Rich("2025-W41"), SampleReviews.Rich("2025-W42"), SampleReviews.Empty("2025-W43", "1", "<House>"));
        string html = File.ReadAllText(Path.Combine(_folder.Path, "house-1", "season.html"));
        Assert.Empty(Rendered.UnbalancedTags(html));
        Assert.DoesNotContain("NaN", html, StringComparison.Ordinal);
        Assert.Contains("&lt;House&gt;", html, StringComparison.Ordinal);
        Assert.Contains("2 weeks with 116 risk hours together, 58 a week on the mean.", html, StringComparison.Ordinal);
        foreach (System.Text.RegularExpressions.Match link in System.Text.RegularExpressions.Regex.Matches(html, "href=\"([^\"#:]+\\.html)\""))
        {
            Assert.True(File.Exists(Path.Combine(_folder.Path, "house-1", link.Groups[1].Value)), link.Value);
        }

        Assert.Contains("href=\"house-1/season.html\"", File.ReadAllText(Path.Combine(_folder.Path, "index.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void SitePublisher_WithoutFeedOrLatest_HasSomethingToDo()
    {
        foreach (string file in (string[])["feed.xml", "latest.json"])
        {
            Complete(SampleReviews.Rich());
            Assert.Equal("k", new SitePublisher(_folder.Path, new PageOptions(UnitSystem.Metric)).RunKey);
            File.Delete(Path.Combine(_folder.Path, file));
            Assert.Null(new SitePublisher(_folder.Path, new PageOptions(UnitSystem.Metric)).RunKey);
        }
    }

    private void Complete(params Review[] reviews)
    {
        SitePublisher site = new(_folder.Path, new PageOptions(UnitSystem.Metric));
        foreach (Review review in reviews)
        {
            site.Publish(review);
        }

        site.Complete("k");
    }
}
