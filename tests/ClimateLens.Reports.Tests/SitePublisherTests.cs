using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public sealed class SitePublisherTests : IDisposable
{
    private static readonly PageOptions Metric = new(UnitSystem.Metric);
    private readonly TemporaryFolder _folder = new();

    private string Site => _folder.PathOf("site");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Publish_Review_WritesPageDataAndAssets()
    {
        PublishedPage page = new SitePublisher(Site, Metric).Publish(SampleReviews.Rich());
        Assert.Equal(Path.Combine(Site, "house-1", "2025-W42", "index.html"), page.IndexHtml);
        Assert.Equal(
            [".entry.json", "canopy.csv", "causes.csv", "drying.csv", "error-shares.csv", "files.csv", "findings.csv", "flags.csv", "gaps.csv", "graders.csv", "hours.csv", "house-balance.csv", "index.html", "pots.csv", "resistance-groups.csv", "review.json", "scouted-benches.csv", "scouting.csv", "second-opinion.csv", "sensors.csv", "sensors.html", "treatments.csv", "validation.html", "wall.html", "watering-effect.csv", "waterings.csv", "wet-periods.csv", "what-ifs.csv"],
            Directory.GetFiles(Path.GetDirectoryName(page.IndexHtml)!).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(
            ["page.js", "plotly-2.28.0.min.js", "plotly-2.28.0.min.js.LICENSE.txt", "site.css"],
            Directory.GetFiles(Path.Combine(Site, "assets")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(3, page.Summary.SetAside);
        Assert.Empty(page.FailedCells);
    }

    [Fact]
    public void Site_MadeTwice_HasSameBytes()
    {
        foreach (string site in (string[])["a", "b"])
        {
            SitePublisher publisher = new(_folder.PathOf(site), Metric);
            publisher.Publish(SampleReviews.Rich());
            publisher.Publish(SampleReviews.Empty());
            publisher.Complete("key");
        }

        string[] files = [.. Directory.GetFiles(_folder.PathOf("a"), "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_folder.PathOf("a"), f))];
        Assert.True(files.Length > 15);
        Assert.All(files, f => Assert.Equal(File.ReadAllBytes(Path.Combine(_folder.PathOf("a"), f)), File.ReadAllBytes(Path.Combine(_folder.PathOf("b"), f))));
    }

    [Fact]
    public void Complete_RunKey_IsReadByTheNextPublisher()
    {
        SitePublisher first = new(Site, Metric);
        Assert.Null(first.RunKey);
        first.Publish(SampleReviews.Rich());
        first.Complete("run 1");
        SitePublisher next = new(Site, Metric);
        Assert.Equal("run 1", next.RunKey);
        Assert.Equal(first.Summaries, next.Summaries);
    }

    [Fact]
    public void RunKey_OtherOptionsOrAPageGone_IsNull()
    {
        PublishedPage page = Published(SampleReviews.Rich());
        Assert.Equal("k", new SitePublisher(Site, Metric).RunKey);
        Assert.Null(new SitePublisher(Site, new PageOptions(UnitSystem.Us)).RunKey);
        File.Delete(page.IndexHtml);
        Assert.Null(new SitePublisher(Site, Metric).RunKey);
    }

    [Fact]
    public void RunKey_IndexGone_IsNull()
    {
        Published(SampleReviews.Rich());
        File.Delete(Path.Combine(Site, "index.html"));
        Assert.Null(new SitePublisher(Site, Metric).RunKey);
    }

    [Theory]
    [InlineData("assets/site.css")]
    [InlineData("house-1/2025-W42/hours.csv")]
    [InlineData("house-1/2025-W42/review.json")]
    public void RunKey_APieceOfTheSiteGone_IsNull(string piece)
    {
        Published(SampleReviews.Rich());
        Assert.Equal("k", new SitePublisher(Site, Metric).RunKey);
        File.Delete(Path.Combine(Site, piece));
        Assert.Null(new SitePublisher(Site, Metric).RunKey);
    }

    [Fact]
    public void IsCurrent_AfterComplete_HoldsOnlyForThisInputAndTheseOptions()
    {
        Review review = SampleReviews.Rich();
        string hash = review.Provenance.InputHash;
        SitePublisher publisher = new(Site, Metric);
        Assert.False(publisher.IsCurrent("1", "2025-W42", hash));
        publisher.Publish(review);
        Assert.True(publisher.IsCurrent("1", "2025-W42", hash));
        publisher.Complete("k");
        Assert.True(new SitePublisher(Site, Metric).IsCurrent("1", "2025-W42", hash));
        Assert.False(new SitePublisher(Site, Metric).IsCurrent("1", "2025-W42", new string('e', 64)));
        Assert.False(new SitePublisher(Site, Metric).IsCurrent("1", "2025-W41", hash));
        Assert.False(new SitePublisher(Site, Metric).IsCurrent("2", "2025-W42", hash));
        Assert.False(new SitePublisher(Site, new PageOptions(UnitSystem.Us)).IsCurrent("1", "2025-W42", hash));
    }

    [Fact]
    public void IsCurrent_PageDeletedOrOverwritten_IsFalse()
    {
        Review review = SampleReviews.Rich();
        PublishedPage page = Published(review);
        File.WriteAllText(page.IndexHtml, "<!DOCTYPE html>");
        Assert.False(Current(review));
        File.Delete(page.IndexHtml);
        Assert.False(Current(review));
        Assert.Empty(new SitePublisher(Site, Metric).Summaries);
    }

    [Fact]
    public void IsCurrent_AfterAKilledRun_HoldsForThePageThatItMade_NotForTheOneBefore()
    {
        Review old = SampleReviews.Rich();
        Published(old);
        Review changed = old with { Provenance = old.Provenance with { InputHash = new string('d', 64) } };
        new SitePublisher(Site, Metric).Publish(changed); // killed before Complete
        Assert.False(Current(old));
        Assert.True(Current(changed));
        Assert.Null(new SitePublisher(Site, Metric).RunKey);
    }

    /// <summary>What the store told of an input stands for the input's hash: for that page, and for the program that made its review.</summary>
    [Fact]
    public void InputHashOf_HoldsForTheTraceOfThePage_AcrossRuns()
    {
        Review review = SampleReviews.Rich();
        string hash = review.Provenance.InputHash;
        SitePublisher first = new(Site, Metric);
        first.Publish(review, "trace");
        first.Publish(SampleReviews.Rich("2025-W43"));
        first.Complete("key");
        SitePublisher next = new(Site, Metric);
        Assert.Equal(hash, next.InputHashOf("1", "2025-W42", "trace"));
        Assert.Null(next.InputHashOf("1", "2025-W42", "other"));
        Assert.Null(next.InputHashOf("1", "2025-W43", "")); // not known is nothing to go by
        Assert.Null(next.InputHashOf("2", "2025-W42", "trace"));
        Assert.Equal((true, false), (next.Knows("1", "2025-W43"), next.Knows("1", "2025-W44")));
        Assert.Null(new SitePublisher(Site, Metric with { Language = Nursery.Languages.Language.TryGet("nl", out Nursery.Languages.Language? dutch) ? dutch : throw new InvalidOperationException() }).InputHashOf("1", "2025-W42", "trace")); // a review in another language is another review
        Assert.Equal(hash, new SitePublisher(Site, new PageOptions(UnitSystem.Us)).InputHashOf("1", "2025-W42", "trace")); // the same review, whatever the page shows
        next.Retrace("1", "2025-W42", "newer");
        Assert.Equal(hash, next.InputHashOf("1", "2025-W42", "newer"));
        Assert.Null(new SitePublisher(Site, Metric).InputHashOf("1", "2025-W42", "newer"));
        next.Complete("key");
        Assert.Equal(hash, new SitePublisher(Site, Metric).InputHashOf("1", "2025-W42", "newer"));
    }

    [Fact]
    public void IsCurrent_KilledBetweenTheFilesOfAPage_IsFalseAndTheOldPageStands()
    {
        Review old = SampleReviews.Rich();
        PublishedPage page = Published(old);
        string html = File.ReadAllText(page.IndexHtml);
        Review changed = old with { Provenance = old.Provenance with { InputHash = new string('d', 64) } };
        File.Delete(Path.Combine(Path.GetDirectoryName(page.IndexHtml)!, "gaps.csv"));
        Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(page.IndexHtml)!, "gaps.csv", "in-the-way"));
        Assert.Throws<SiteUnavailableException>(() => new SitePublisher(Site, Metric).Publish(changed));
        Assert.Equal(html, File.ReadAllText(page.IndexHtml));
        Assert.False(Current(old));
    }

    [Fact]
    public void Open_LeftoverStaging_IsCleared()
    {
        Directory.CreateDirectory(Path.Combine(Site, ".staging", "house-1~2025-W42~x"));
        File.WriteAllText(Path.Combine(Site, ".staging", "house-1~2025-W42~x", "hours.csv"), "half");
        SitePublisher publisher = new(Site, Metric);
        publisher.Publish(SampleReviews.Rich());
        publisher.Complete("k");
        Assert.Empty(Directory.GetDirectories(Site, ".staging", SearchOption.AllDirectories));
        Assert.Empty(Directory.GetFiles(Site, ".begun", SearchOption.AllDirectories));
    }

    [Fact]
    public void Open_FileInPlaceOfTheFolder_IsUnavailable()
    {
        File.WriteAllText(Site, "not a folder");
        SiteUnavailableException problem = Assert.Throws<SiteUnavailableException>(() => new SitePublisher(Site, Metric));
        Assert.Contains(Site, problem.Message, StringComparison.Ordinal);
        Assert.Equal("not a folder", File.ReadAllText(Site));
    }

    [Fact]
    public void Publish_HouseFolderIsAFile_IsUnavailableAndNothingElseChanged()
    {
        SitePublisher publisher = new(Site, Metric);
        File.WriteAllText(Path.Combine(Site, "house-1"), "in the way");
        Assert.Throws<SiteUnavailableException>(() => publisher.Publish(SampleReviews.Rich()));
        Assert.Empty(publisher.Summaries);
        publisher.Publish(SampleReviews.Empty());
        Assert.Single(publisher.Summaries);
    }

    [Fact]
    public void Publish_WateringsNoLongerKnown_RemovesTheirOldFile()
    {
        Review review = SampleReviews.Rich();
        Published(review);
        PublishedPage page = Published(review with { Waterings = null });
        string waterings = Path.Combine(Path.GetDirectoryName(page.IndexHtml)!, "waterings.csv");
        Assert.False(File.Exists(waterings));
        Assert.DoesNotContain("waterings.csv\"", File.ReadAllText(page.IndexHtml), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../up")]
    [InlineData("a/b")]
    [InlineData("")]
    [InlineData("a b")]
    public void Publish_IdThatIsNoFolderName_Throws(string id)
        => Assert.Throws<ArgumentException>(() => new SitePublisher(Site, Metric).Publish(SampleReviews.Rich(houseId: id)));

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("{\"version\":99,\"runKey\":\"x\",\"maker\":\"x\",\"entries\":[]}")]
    [InlineData("{\"version\":1,\"runKey\":\"x\",\"maker\":\"x\",\"entries\":[null]}")]
    [InlineData("{\"version\":1,\"runKey\":\"x\"}")]
    public void Open_DamagedState_IsANewSite(string state)
    {
        Published(SampleReviews.Rich());
        File.WriteAllText(Path.Combine(Site, "site.json"), state);
        SitePublisher publisher = new(Site, Metric);
        Assert.Null(publisher.RunKey);
        Assert.Empty(publisher.Summaries);
    }

    [Fact]
    public void Assets_ChangedOnDisk_AreMended()
    {
        Published(SampleReviews.Rich());
        string library = Path.Combine(Site, "assets", "plotly-2.28.0.min.js");
        DateTime written = File.GetLastWriteTimeUtc(library);
        File.WriteAllText(Path.Combine(Site, "assets", "page.js"), "changed");
        new SitePublisher(Site, Metric).Complete("k");
        Assert.Contains("Draws the charts", File.ReadAllText(Path.Combine(Site, "assets", "page.js")), StringComparison.Ordinal);
        Assert.Equal(written, File.GetLastWriteTimeUtc(library));
    }

    [Fact]
    public void Summaries_HousesAndPeriods_NewestFirstThenHousesByNumber()
    {
        SitePublisher publisher = new(Site, Metric);
        foreach ((string week, string house) in ((string, string)[])[("2025-W42", "10"), ("2025-W42", "2"), ("2026-W01", "2"), ("2025-W09", "2"), ("2025-W42", "1")])
        {
            publisher.Publish(SampleReviews.Empty(week, house));
        }

        Review days = SampleReviews.Empty("2025-W43", "2");
        publisher.Publish(days with { Period = days.Period with { Week = null } });
        Assert.Equal(
            ["2026-W01 2", "2025-10-20_2025-10-26 2", "2025-W42 1", "2025-W42 2", "2025-W42 10", "2025-W09 2"],
            publisher.Summaries.Select(s => $"{s.Period} {s.House}"));
    }

    [Fact]
    public async Task Publish_FromSeveralThreads_GivesTheSameSiteAsOneAfterAnother()
    {
        string[] weeks = ["2025-W36", "2025-W37", "2025-W38", "2025-W39"];
        SitePublisher one = new(_folder.PathOf("one"), Metric);
        SitePublisher many = new(_folder.PathOf("many"), Metric);
        foreach (string week in weeks)
        {
            one.Publish(SampleReviews.Rich(week));
        }

        await Parallel.ForEachAsync(weeks, (week, _) =>
        {
            many.Publish(SampleReviews.Rich(week));
            return ValueTask.CompletedTask;
        });
        one.Complete("k");
        many.Complete("k");
        foreach (string file in Directory.GetFiles(_folder.PathOf("one"), "*", SearchOption.AllDirectories))
        {
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(file.Replace(_folder.PathOf("one"), _folder.PathOf("many"), StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Index_TwoHousesTwoWeeks_MatchesGolden()
    {
        SitePublisher publisher = new(Site, Metric);
        publisher.Publish(SampleReviews.Rich());
        publisher.Publish(SampleReviews.Rich("2025-W43"));
        publisher.Publish(SampleReviews.Empty());
        publisher.Complete("k");
        GoldenFile.Check("index.html", File.ReadAllText(Path.Combine(Site, "index.html")));
    }

    [Fact]
    public void Index_NothingPublished_SaysSo()
    {
        new SitePublisher(Site, Metric).Complete("k");
        Assert.Contains("No week has been reviewed yet.", File.ReadAllText(Path.Combine(Site, "index.html")), StringComparison.Ordinal);
    }

    private PublishedPage Published(Review review)
    {
        SitePublisher publisher = new(Site, Metric);
        PublishedPage page = publisher.Publish(review);
        publisher.Complete("k");
        return page;
    }

    private bool Current(Review review) => new SitePublisher(Site, Metric).IsCurrent("1", "2025-W42", review.Provenance.InputHash);
}
