using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>The same page as a Jupyter notebook and as one file.</summary>
public sealed partial class FormatTests : IDisposable
{
    private readonly TemporaryFolder _site = new();

    [Theory]
    [InlineData("rich")]
    [InlineData("empty")]
    public void Ipynb_OfAPage_IsValidByTheFormatsOwnValidator(string kind)
    {
        string folder = Publish(kind == "rich" ? SampleReviews.Rich() : SampleReviews.Empty());
        foreach (string file in Directory.GetFiles(folder, "*.ipynb"))
        {
            // Debian's python3-nbformat: the reference library of the format.
            using Process check = Process.Start(new ProcessStartInfo("/usr/bin/python3", ["-c", "import nbformat, sys; nbformat.validate(nbformat.read(sys.argv[1], as_version=nbformat.NO_CONVERT))", file]) { RedirectStandardError = true })!;
            string said = check.StandardError.ReadToEnd();
            check.WaitForExit();
            Assert.True(check.ExitCode == 0, said.Contains("No module named", StringComparison.Ordinal) ? "This test needs Debian's python3-nbformat; tests/run.sh installs it." : said);
        }

        Assert.Equal(4, Directory.GetFiles(folder, "*.ipynb").Length);
    }

    [Fact]
    public void Ipynb_OfAPage_ReadsTheFilesBesideItAndHoldsWhatThePageShows()
    {
        string folder = Publish(SampleReviews.Rich());
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, "index.ipynb")));
        JsonElement[] cells = [.. file.RootElement.GetProperty("cells").EnumerateArray()];
        string[] sources = [.. cells.Where(c => c.GetProperty("cell_type").GetString() == "code").Select(c => c.GetProperty("source").GetString()!)];
        foreach (Match read in ReadCsv().Matches(string.Join('\n', sources)))
        {
            Assert.True(File.Exists(Path.Combine(folder, read.Groups[1].Value)), read.Value);
        }

        Assert.Contains(sources, s => s.Contains("pd.read_csv(\"hours.csv\")", StringComparison.Ordinal));
        JsonElement[] outputs = [.. cells.Where(c => c.TryGetProperty("outputs", out _)).SelectMany(c => c.GetProperty("outputs").EnumerateArray()).Select(o => o.GetProperty("data"))];
        JsonElement chart = outputs.First(o => o.TryGetProperty("application/vnd.plotly.v1+json", out _)).GetProperty("application/vnd.plotly.v1+json");
        Assert.Equal(168, chart.GetProperty("data")[0].GetProperty("text").GetArrayLength());
        Assert.Contains(outputs, o => o.TryGetProperty("text/html", out JsonElement html) && html.GetString()!.Contains("class=\"calendar\"", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", file.RootElement.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Ipynb_NameThatLooksLikeMarkup_StaysText()
    {
        string folder = Publish(SampleReviews.Rich(houseName: "<img src=x onerror=alert(1)> [a](javascript:b) **c**"));
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, "index.ipynb")));
        string title = file.RootElement.GetProperty("cells")[0].GetProperty("source").GetString()!;
        Assert.DoesNotContain("<img", title, StringComparison.Ordinal);
        Assert.DoesNotContain("[a](", title, StringComparison.Ordinal);
        Assert.DoesNotContain("**c**", title, StringComparison.Ordinal);
    }

    [Fact]
    public void SingleFile_OfAPage_NamesNothingOutsideItselfAndAllowsOnlyItsOwnScripts()
    {
        string html = File.ReadAllText(Path.Combine(Publish(SampleReviews.Rich()), "index.single.html"));
        Assert.DoesNotContain("src=\"", html[..html.IndexOf("<script>", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.DoesNotContain("../", html[..html.IndexOf("<script>", StringComparison.Ordinal)], StringComparison.Ordinal);
        string policy = Policy().Match(html).Groups[1].Value;
        Assert.DoesNotContain("'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("file:", policy, StringComparison.Ordinal);
        foreach (Match script in Scripts().Matches(html))
        {
            Assert.Contains($"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.Groups[1].Value)))}'", policy, StringComparison.Ordinal);
        }

        Assert.Equal(2, Scripts().Count(html));
    }

    [Fact]
    public void SingleFile_Data_AreTheBytesOfTheFilesBesideThePage()
    {
        string folder = Publish(SampleReviews.Rich());
        MatchCollection links = DataLinks().Matches(File.ReadAllText(Path.Combine(folder, "index.single.html")));
        Assert.True(links.Count > 10);
        Assert.All(links, link => Assert.Equal(File.ReadAllBytes(Path.Combine(folder, link.Groups[1].Value)), Convert.FromBase64String(link.Groups[2].Value)));
    }

    [Fact]
    public void Formats_NoLongerAskedFor_AreTakenAway()
    {
        string folder = Publish(SampleReviews.Rich());
        SitePublisher plain = new(_site.Path, new PageOptions(UnitSystem.Metric));
        Assert.False(plain.IsCurrent("1", "2025-W42", SampleReviews.Rich().Provenance.InputHash));
        plain.Publish(SampleReviews.Rich());
        Assert.Empty(Directory.GetFiles(folder, "*.ipynb").Concat(Directory.GetFiles(folder, "*.single.html")));
    }

    public void Dispose() => _site.Dispose();

    private string Publish(Review review)
    {
        SitePublisher publisher = new(_site.Path, new PageOptions(UnitSystem.Metric) { Ipynb = true, SingleFile = true });
        return Path.GetDirectoryName(publisher.Publish(review).IndexHtml)!;
    }

    [GeneratedRegex("read_csv\\(\"([^\"]+)\"\\)")]
    private static partial Regex ReadCsv();

    [GeneratedRegex("Content-Security-Policy\" content=\"([^\"]*)\"")]
    private static partial Regex Policy();

    [GeneratedRegex("<script>(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Scripts();

    [GeneratedRegex("download=\"([^\"]+)\" href=\"data:[a-z/]+;base64,([^\"]*)\"")]
    private static partial Regex DataLinks();
}
