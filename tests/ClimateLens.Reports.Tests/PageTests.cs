using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Pages;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public class PageTests
{
    private const string Hostile = "<script>alert(1)</script> \"'&\u202Eevil\u0000 🌱 ";

    [Fact]
    public void Page_SameReviewTwice_SameText()
        => Assert.Equal(Rendered.Page(SampleReviews.Rich()).Html, Rendered.Page(SampleReviews.Rich()).Html);

    [Theory]
    [InlineData("2025-W42")]
    [InlineData("2025-W43")]
    [InlineData("2026-W13")]
    public void Page_RichReview_IsWellFormedAndLight(string week)
    {
        RenderedPage page = Rendered.Page(SampleReviews.Rich(week));
        Assert.Empty(page.FailedCells);
        Assert.Empty(Rendered.UnbalancedTags(page.Html));
        Assert.InRange(Encoding.UTF8.GetByteCount(page.Html), 20_000, 400_000);
    }

    [Fact]
    public void Page_EmptyReview_StandsWithoutAnyFailedCell()
    {
        RenderedPage page = Rendered.Page(SampleReviews.Empty());
        Assert.Empty(page.FailedCells);
        Assert.Empty(Rendered.UnbalancedTags(page.Html));
        Assert.Contains("no usable readings", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Invented", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_InventedNursery_SaysSo()
        => Assert.Contains("Invented demonstration data.", Rendered.Page(SampleReviews.Rich()).Html, StringComparison.Ordinal);

    [Fact]
    public void Page_CellThatThrows_SaysSoInItsPlaceAndTheRestStands()
    {
        RenderedPage page = Rendered.Page(SampleReviews.Rich(), cells: [new WeekInBriefCell(), new ThrowingCell(), new ProvenanceCell()]);
        Assert.Equal("broken", Assert.Single(page.FailedCells));
        int brief = page.Html.IndexOf("id=\"brief\"", StringComparison.Ordinal);
        int broken = page.Html.IndexOf("This part could not be made (InvalidOperationException: bad &lt;luck&gt;)", StringComparison.Ordinal);
        int provenance = page.Html.IndexOf("id=\"provenance\"", StringComparison.Ordinal);
        Assert.True(brief > 0 && broken > brief && provenance > broken);
        Assert.Contains("1 part of this page could not be made", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_HostileTextEverywhere_IsEncoded()
    {
        string html = Rendered.Page(Hostilely()).Html;
        Assert.Empty(Rendered.UnbalancedTags(html));
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        Assert.DoesNotContain("\0", html, StringComparison.Ordinal);
        Assert.Contains("<bdi>&lt;script&gt;alert(1)&lt;/script&gt; &quot;&#39;&amp;", html, StringComparison.Ordinal);
        Assert.Contains("🌱", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_Figures_AreDataWithOnePointAnHour()
    {
        Review review = SampleReviews.Rich();
        MatchCollection figures = Regex.Matches(Rendered.Page(review).Html, "<script type=\"application/json\" id=\"([a-z-]+)\">(.*?)</script>", RegexOptions.Singleline);
        Assert.Equal(["chart-air-figure", "chart-margin-figure"], figures.Select(f => f.Groups[1].Value));
        foreach (Match figure in figures)
        {
            using JsonDocument json = JsonDocument.Parse(figure.Groups[2].Value);
            List<JsonElement> lines = [.. json.RootElement.GetProperty("data").EnumerateArray().Where(t => t.TryGetProperty("dx", out _))];
            Assert.NotEmpty(lines);
            Assert.All(lines, l => Assert.Equal(review.Hours.Length, l.GetProperty("y").GetArrayLength()));
            Assert.All(lines, l => Assert.Equal(5, l.GetProperty("y").EnumerateArray().Count(v => v.ValueKind == JsonValueKind.Null)));
            Assert.Equal(review.Hours.Length, json.RootElement.GetProperty("labels").GetArrayLength());
        }
    }

    [Fact]
    public void Page_UsUnits_ChartIsInFahrenheitAndMarginHasNoZeroShift()
    {
        Review review = SampleReviews.Rich();
        double margin = FirstValue(Rendered.Page(review, UnitSystem.Us).Html, "chart-margin-figure");
        double air = FirstValue(Rendered.Page(review, UnitSystem.Us).Html, "chart-air-figure");
        Assert.Equal(review.Hours[0].DewPointMarginK!.Value * 9 / 5, margin, 0.006);
        Assert.Equal((review.Hours[0].AirTemperatureC!.Value * 9 / 5) + 32, air, 0.06);
    }

    [Fact]
    public void Page_Text_NamesNoAddressOutside()
    {
        string html = Rendered.Page(SampleReviews.Rich()).Html;
        Assert.DoesNotContain("http:", html, StringComparison.Ordinal);
        Assert.DoesNotContain("https:", html, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"//", html, StringComparison.Ordinal);
    }

    private static double FirstValue(string html, string id)
    {
        Match figure = Regex.Match(html, $"id=\"{id}\">(.*?)</script>", RegexOptions.Singleline);
        using JsonDocument json = JsonDocument.Parse(figure.Groups[1].Value);
        return json.RootElement.GetProperty("data")[0].GetProperty("y")[0].GetDouble();
    }

    private static Review Hostilely()
    {
        string text = Hostile + new string('x', 200);
        Review review = SampleReviews.Rich(houseName: text);
        return review with
        {
            House = review.House with { Nursery = text, Crop = text },
            Waterings = [.. review.Waterings!.Value.Select(w => w with { Bench = text, Source = text })],
            Findings = [new Finding(text, 1, text, text, text, [text])],
            NotKnown = [new Unknown(text, text)],
            Sensors = [new SensorReport(text, text, text, new FlagCounts(1, 1, 1, 1, 1), [text])],
            Records = review.Records! with
            {
                Kinds = review.Records.Kinds.Add(text, new RecordCount(1, text)),
                Treatments = [review.Records.Treatments[0] with { Bench = text, What = text, Purpose = text, ActiveIngredient = text, Groups = [text] }],
            },
            Pots = review.Pots! with { Benches = [review.Pots.Benches[0] with { Bench = text }], People = [new PotPerson(text, 1, 1)] },
            Provenance = review.Provenance with { Tool = text, NurseryFile = text, Files = [review.Provenance.Files[0] with { File = text, Source = text }] },
        };
    }

    private sealed class ThrowingCell : IReportCell
    {
        public string Name => "broken";

        public string Heading => "Will it stand?";

        public CellContent Render(CellContext context) => throw new InvalidOperationException("bad <luck>");
    }
}
