using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>Pages made by themselves, beside each other, and the site that takes them up.</summary>
public sealed class OnePagePublisherTests : IDisposable
{
    private static readonly PageOptions Metric = new(UnitSystem.Metric);
    private readonly TemporaryFolder _folder = new();

    private string Site => _folder.PathOf("site");

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Pages_OpenAtOnce_AreAllTakenUp_AndTheSiteIsThatOfOnePublisher()
    {
        Review one = SampleReviews.Rich(), two = SampleReviews.Rich(houseId: "2", houseName: "House 2");
        using (OnePagePublisher first = new(Site, Metric, "1", "2025-W42"), second = new(Site, Metric, "2", "2025-W42"))
        {
            first.Publish(one);
            second.Publish(two);
        }

        SitePublisher whole = new(Site, Metric);
        Assert.Null(whole.RunKey);
        whole.Complete("k");
        SitePublisher alone = new(_folder.PathOf("alone"), Metric);
        alone.Publish(one);
        alone.Publish(two);
        alone.Complete("k");
        Assert.Equal(Files(_folder.PathOf("alone")), Files(Site));
    }

    [Fact]
    public void Page_HeldByAnother_IsRefused_AndFreeAfterwards()
    {
        using (OnePagePublisher held = new(Site, Metric, "1", "2025-W42"))
        {
            Assert.Throws<PageHeldException>(() => new OnePagePublisher(Site, Metric, "1", "2025-W42"));
        }

        using OnePagePublisher free = new(Site, Metric, "1", "2025-W42");
        Assert.Null(free.CurrentOf("hash"));
    }

    [Fact]
    public void CurrentOf_HoldsForThisInputOnly_BeforeAndAfterTheSiteIsComplete()
    {
        Review review = SampleReviews.Rich();
        string hash = review.Provenance.InputHash;
        Publish(review);
        foreach (bool complete in (bool[])[false, true])
        {
            if (complete)
            {
                new SitePublisher(Site, Metric).Complete("k");
            }

            using OnePagePublisher page = new(Site, Metric, "1", "2025-W42");
            Assert.Equal("house-1/2025-W42/index.html", page.CurrentOf(hash)?.Page);
            Assert.Null(page.CurrentOf("other"));
        }
    }

    [Fact]
    public void LateData_BetweenSingleRuns_KeepWhatThePageSaidBefore()
    {
        Review review = SampleReviews.Rich();
        Publish(review);
        new SitePublisher(Site, Metric).Complete("k");
        Publish(review with { RiskHours = new Estimate(99, 90, 110), Provenance = review.Provenance with { InputHash = "late" } });
        new SitePublisher(Site, Metric).Complete("k");
        Assert.Contains($"\"was\": {review.RiskHours!.Value}", File.ReadAllText(Path.Combine(Site, "site.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void TakeUpPages_NoStateAndNoNote_ReadsTheReview()
    {
        SitePublisher first = new(Site, Metric);
        first.Publish(SampleReviews.Rich());
        first.Complete("k");
        File.Delete(Path.Combine(Site, "site.json"));
        SitePublisher next = new(Site, Metric);
        Assert.Empty(next.Summaries);
        next.TakeUpPages();
        Assert.Equal(first.Summaries, next.Summaries);
        Assert.False(next.IsCurrent("1", "2025-W42", next.Summaries[0].InputHash)); // its maker is not known
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{\"house\":{\"id\":\"7\"}}")]
    [InlineData("[]")]
    public void TakeUpPages_ReviewThatCannotBeRead_IsPassedOver(string json)
    {
        SitePublisher first = new(Site, Metric);
        PublishedPage page = first.Publish(SampleReviews.Rich());
        File.WriteAllText(Path.Combine(Path.GetDirectoryName(page.IndexHtml)!, "review.json"), json);
        File.Delete(Path.Combine(Path.GetDirectoryName(page.IndexHtml)!, ".entry.json"));
        SitePublisher next = new(Site, Metric);
        next.TakeUpPages();
        Assert.Empty(next.Summaries);
    }

    [Fact]
    public void Note_Damaged_IsPassedOver()
    {
        Publish(SampleReviews.Rich());
        File.WriteAllText(Path.Combine(Site, "house-1/2025-W42/.entry.json"), "{");
        Assert.Empty(new SitePublisher(Site, Metric).Summaries);
    }

    private void Publish(Review review)
    {
        using OnePagePublisher page = new(Site, Metric, review.House.Id, review.Period.Week!);
        page.Publish(review);
    }

    private static SortedDictionary<string, string> Files(string folder) => new(Directory
        .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToDictionary(f => Path.GetRelativePath(folder, f), f => Convert.ToBase64String(File.ReadAllBytes(f))), StringComparer.Ordinal);
}
