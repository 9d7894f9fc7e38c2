using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Notebooks;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>A page is made again when its notebook or its review changed, and not otherwise; from review.json, without another review.</summary>
public sealed class RenderedAgainTests : IDisposable
{
    private const string Mine = "---\ntitle: Mine\nfor: house week\n---\n\n```cell\nname = \"brief\"\n```\n";

    private readonly TemporaryFolder _folder = new();
    private readonly Review _review = SampleReviews.Rich();

    [Fact]
    public void ReviewOf_AfterANotebookChanged_GivesTheReviewThatStands()
    {
        First();
        SitePublisher changed = Publisher(Mine + "\nMore.\n");
        Assert.Null(changed.RunKey);
        Assert.False(changed.IsCurrent("1", "2025-W42", _review.Provenance.InputHash));
        Review standing = changed.ReviewOf("1", "2025-W42", _review.Provenance.InputHash)!;
        Assert.Equal(ReviewJson.Write(_review), ReviewJson.Write(standing));
        Assert.Null(changed.ReviewOf("1", "2025-W42", "another input"));
        Assert.Null(changed.ReviewOf("1", "2025-W41", _review.Provenance.InputHash));
    }

    [Fact]
    public void Publish_AfterANotebookChanged_WritesItsPageAlone()
    {
        string folder = First();
        Dictionary<string, DateTime> times = Times(folder);
        SitePublisher changed = Publisher(Mine + "\nMore.\n");
        changed.Publish(changed.ReviewOf("1", "2025-W42", _review.Provenance.InputHash)!);
        changed.Complete("key");
        Assert.Equal(["mine.html"], Times(folder).Where(t => times[t.Key] != t.Value).Select(t => t.Key));
        Assert.Contains("More.", File.ReadAllText(Path.Combine(folder, "mine.html")), StringComparison.Ordinal);
        Assert.True(changed.IsCurrent("1", "2025-W42", _review.Provenance.InputHash));
    }

    [Fact]
    public void Publish_ANotebookTakenAway_RemovesItsPageAndItsLinks()
    {
        string folder = First();
        SitePublisher without = new(_folder.PathOf("site"), new PageOptions(UnitSystem.Metric));
        Assert.False(without.IsCurrent("1", "2025-W42", _review.Provenance.InputHash));
        without.Publish(without.ReviewOf("1", "2025-W42", _review.Provenance.InputHash)!);
        Assert.False(File.Exists(Path.Combine(folder, "mine.html")));
        Assert.DoesNotContain("mine.html", File.ReadAllText(Path.Combine(folder, "index.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Publish_FromTheStandingReview_GivesTheBytesOfTheFirstTime()
    {
        string folder = Path.GetDirectoryName(Publisher(Mine).Publish(_review).IndexHtml)!;
        Dictionary<string, byte[]> first = Directory.GetFiles(folder).ToDictionary(f => f, File.ReadAllBytes);
        using TemporaryFolder other = new();
        new SitePublisher(other.Path, Options(Mine)).Publish(ReviewJson.Read(first[Path.Combine(folder, "review.json")]));
        Assert.All(first, f => Assert.Equal(f.Value, File.ReadAllBytes(Path.Combine(other.PathOf("house-1/2025-W42"), Path.GetFileName(f.Key)))));
    }

    [Fact]
    public void Index_AfterTheNextRun_NamesWhatIsNewAndWhatChanged()
    {
        First();
        Assert.DoesNotContain("Since the run before", File.ReadAllText(_folder.PathOf("site/index.html")), StringComparison.Ordinal);
        SitePublisher second = Publisher(Mine);
        second.Publish(_review with { RiskHours = new Estimate(9, 8, 10), Provenance = _review.Provenance with { InputHash = "late" } });
        second.Publish(SampleReviews.Rich("2025-W43"));
        second.Complete("b");
        string index = File.ReadAllText(_folder.PathOf("site/index.html"));
        Assert.Contains("week 43 of 2025</a>: new, ", index, StringComparison.Ordinal);
        Assert.Contains("week 42 of 2025</a>: 9 risk hours, was ", index, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>A complete site of one page; gives the page's folder.</summary>
    private string First()
    {
        SitePublisher publisher = Publisher(Mine);
        string page = publisher.Publish(_review).IndexHtml;
        publisher.Complete("a");
        return Path.GetDirectoryName(page)!;
    }

    private SitePublisher Publisher(string notebook) => new(_folder.PathOf("site"), Options(notebook));

    private PageOptions Options(string notebook)
    {
        Directory.CreateDirectory(_folder.PathOf("notebooks"));
        File.WriteAllText(_folder.PathOf("notebooks/mine.md"), notebook);
        return new PageOptions(UnitSystem.Metric) { Notebooks = NotebookFolder.Read(_folder.PathOf("notebooks"), "notebooks", isAsked: true) };
    }

    private static Dictionary<string, DateTime> Times(string folder) => Directory.GetFiles(folder).ToDictionary(f => Path.GetFileName(f), File.GetLastWriteTimeUtc);
}
