using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Units;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public sealed class NotebookTests
{
    private const string Front = "---\ntitle: T\nfor: house week\n---\n";

    [Fact]
    public void BuiltIn_All_ReadWithoutFault()
    {
        Assert.All((string[])["sensors", "validation", "week"], n => Assert.Contains(n, BuiltInNotebooks.Names));
        Assert.All(BuiltInNotebooks.All.Values, n => Assert.True(n.BuiltIn && n.Hash.Length == 64));
    }

    [Fact]
    public void Week_HasEveryCellInTheOrderOfTheList()
        => Assert.Equal(HouseWeekCells.All.Select(c => c.Name), BuiltInNotebooks.All["week"].Parts.OfType<CellPart>().Select(c => c.Cell));

    [Theory]
    [InlineData("no front matter at all", 1, "no front matter", "begin the file with ---")]
    [InlineData("---\ntitle: T\nfor: house weeks\n---\nx", 3, "for: house weeks", "did you mean \"house week\"?")]
    [InlineData("---\nfor: house week\n---\nx", 1, "no title", "title:")]
    [InlineData("---\ntitle: T\nfro: house week\n---\nx", 3, "the key \"fro\"", "did you mean \"for\"?")]
    [InlineData(Front + "\n```cell\nname = \"calender\"\n```\n", 7, "the cell \"calender\"", "did you mean \"calendar\"?")]
    [InlineData(Front + "\n```cell\nmost = 1\n```\n", 6, "a cell without a name", "known cells")]
    [InlineData(Front + "\n```cell\nname = \"change\"\nmots = 1\n```\n", 8, "the parameter \"mots\" of change", "did you mean \"most\"?")]
    [InlineData(Front + "\n```cell\nname = \"change\"\nmost = 99\n```\n", 8, "most = 99", "how many findings")]
    [InlineData(Front + "\n```cell\nname = \"change\"\nmost = \"two\"\n```\n", 8, "most = two", "how many findings")]
    [InlineData(Front + "\n```cell\nname = change\n```\n", 7, "", "write texts in quotes")]
    [InlineData(Front + "\ntext\n{{ riskHours. }}\n", 7, "{{ riskHours. }}", "")]
    [InlineData(Front + "{% for x in y %}", 5, "{% for x in y %}", "statements are not taken")]
    [InlineData(Front, 1, "no text and no cell", "add a fenced block")]
    public void Read_Fault_IsToldWithLineAndMend(string text, int line, string found, string mend)
    {
        (Notebook? notebook, ImmutableArray<Problem> problems) = NotebookReader.Read("n", "notebooks/n.md", text);
        Assert.Null(notebook);
        Problem problem = Assert.Single(problems, p => p.Line == line && p.Found.Contains(found, StringComparison.Ordinal));
        Assert.Equal("notebooks/n.md", problem.File);
        Assert.Contains(mend, problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SeveralFaults_AreAllTold()
        => Assert.Equal(3, NotebookReader.Read("n", "n.md", "---\ntitle: T\nfor: x\ncolour: red\n---\n```cell\nname = \"nope\"\n```").Problems.Length);

    [Theory]
    [InlineData("a b")]
    [InlineData("../a")]
    [InlineData("")]
    public void Read_NameThatIsNoFileName_IsRefused(string name) => Assert.Null(NotebookReader.Read(name, "x.md", Front + "x").Notebook);

    [Fact]
    public void Prose_ValuesOfTheReview_StandInIt()
    {
        string html = Page(SampleReviews.Rich(), "Risk {{ riskHours.value | round }} of {{ coverage.expectedHours }}; {{ no.such | upcase }}; {{ findings[0].rank }}");
        Assert.Equal("Risk 58 of 168; not known; 1", System.Text.RegularExpressions.Regex.Match(html, "<div class=\"prose\"><p>(.*)</p>").Groups[1].Value);
    }

    [Fact]
    public void Prose_NamesOfUsers_AreTextOnly()
    {
        Review review = SampleReviews.Rich();
        review = review with { House = review.House with { Name = "<script>alert(1)</script> [a](javascript:b) **c** \uE0000\uE001" } };
        string html = Page(review, "*Of* {{ house.name }}");
        Assert.Contains("<em>Of</em> &lt;script&gt;alert(1)&lt;/script&gt; [a](javascript:b) **c**", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Prose_HtmlScriptsAndImages_DoNotReachThePage()
    {
        string html = Page(SampleReviews.Rich(), "<img src=x onerror=alert(1)> [a](javascript:alert(1)) [b](JaVaScRiPt:1) ![c](http://x/y.png) [d](https://example.org) [e](data:text/html,x) # h\n\n# Top");
        string main = html[html.IndexOf("<main", StringComparison.Ordinal)..];
        Assert.DoesNotContain("<img", main, StringComparison.Ordinal);
        Assert.DoesNotContain("javascript:", main[..main.IndexOf("</div>", StringComparison.Ordinal)].Replace("&lt;", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("data:text", main, StringComparison.Ordinal);
        Assert.Contains("href=\"https://example.org\"", main, StringComparison.Ordinal);
        Assert.Contains("<h2>Top</h2>", main, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_Parameters_AreUsed()
    {
        string html = Page(SampleReviews.Rich(), "```cell\nname = \"change\"\nmost = 1\nheading = \"Just <one>\"\n```");
        Assert.Contains("Just &lt;one&gt;</h2>", html, StringComparison.Ordinal);
        Assert.Contains("finding-1", html, StringComparison.Ordinal);
        Assert.DoesNotContain("finding-2", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_OwnNotebook_StandsBesideOrInPlaceAndFaultyOnesAreLeftOut()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(Path.Combine(folder.Path, "week.md"), Front + "Mine");
        File.WriteAllText(Path.Combine(folder.Path, "extra.md"), Front + "More");
        File.WriteAllText(Path.Combine(folder.Path, "sensors.md"), "broken");
        File.WriteAllBytes(Path.Combine(folder.Path, "bytes.md"), [0xFF, 0xFE, 0x00]);
        NotebookFolder all = NotebookFolder.Read(folder.Path, "notebooks", isAsked: true);
        Assert.False(all.All["week"].BuiltIn);
        Assert.True(all.All["sensors"].BuiltIn);
        Assert.Equal("week", all.For(NotebookKind.HouseWeek)[0].Name);
        Assert.Contains("extra", all.All.Keys);
        Assert.Equal(["notebooks/bytes.md", "notebooks/sensors.md"], all.Problems.Select(p => p.File!));
        Assert.Empty(NotebookFolder.Read(Path.Combine(folder.Path, "none"), "none", isAsked: false).Problems);
        Assert.Single(NotebookFolder.Read(Path.Combine(folder.Path, "none"), "none", isAsked: true).Problems);
    }

    [Fact]
    public void Publish_EachNotebookOfAHousesWeek_IsAPage_AndOneTakenAwayGoes()
    {
        using TemporaryFolder site = new(), own = new();
        File.WriteAllText(Path.Combine(own.Path, "extra.md"), Front + "More {{ house.name }}");
        PageOptions options = new(UnitSystem.Metric) { Notebooks = NotebookFolder.Read(own.Path, "notebooks", isAsked: true) };
        new SitePublisher(site.Path, options).Publish(SampleReviews.Rich());
        string folder = Path.Combine(site.Path, "house-1", "2025-W42");
        Assert.Equal(["extra.html", "index.html", "sensors.html", "validation.html", "wall.html"], Directory.GetFiles(folder, "*.html").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.Contains("href=\"extra.html\"", File.ReadAllText(Path.Combine(folder, "index.html")), StringComparison.Ordinal);
        string hash = SampleReviews.Rich().Provenance.InputHash;
        Assert.True(new SitePublisher(site.Path, options).IsCurrent("1", "2025-W42", hash) || new SitePublisher(site.Path, options).RunKey is null);
        new SitePublisher(site.Path, new PageOptions(UnitSystem.Metric)).Publish(SampleReviews.Rich());
        Assert.False(File.Exists(Path.Combine(folder, "extra.html")));
    }

    private static string Page(Review review, string text)
    {
        Notebook notebook = NotebookReader.Read("n", "n.md", Front + "\n" + text).Notebook!;
        return HouseWeekPage.Render(review, new DisplayUnits(UnitSystem.Metric), DataFiles.Of(review).Keys, notebook, [notebook], new(() => System.Text.Json.JsonDocument.Parse(ReviewJson.Write(review))), "store").Html;
    }
}
