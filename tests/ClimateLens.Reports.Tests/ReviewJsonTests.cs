using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Json;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Reports.Tests;

public class ReviewJsonTests
{
    [Fact]
    public void Write_SameReviewTwice_SameBytes()
        => Assert.Equal(ReviewJson.Write(SampleReviews.Rich()), ReviewJson.Write(SampleReviews.Rich()));

    [Fact]
    public void Write_RichReview_KeysInOrderOfTheRecord()
    {
        string[] expected = [.. typeof(Review).GetProperties().Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name))];
        Assert.Equal(expected, Root(SampleReviews.Rich()).Select(p => p.Key));
    }

    [Fact]
    public void Write_WeekOfAutumn_TimesCarryTheirOwnOffset()
    {
        JsonObject root = Root(SampleReviews.Rich("2025-W43"));
        Assert.Equal("2025-10-20T00:00:00+01:00", root["period"]!["from"]!.GetValue<string>());
        Assert.Equal("2025-10-27T00:00:00+00:00", root["period"]!["to"]!.GetValue<string>());
        Assert.Equal(169, root["hours"]!.AsArray().Count);
    }

    [Fact]
    public void Write_Methods_AreCamelCase()
        => Assert.Equal("overheadBoom", Root(SampleReviews.Rich())["waterings"]![0]!["method"]!.GetValue<string>());

    [Fact]
    public void Write_NaNInOptionalNumber_IsNull()
    {
        Review review = SampleReviews.Rich();
        review = review with { Hours = review.Hours.SetItem(0, review.Hours[0] with { VpdKPa = double.NaN }) };
        Assert.Null(Root(review)["hours"]![0]!["vpdKPa"]);
        Assert.DoesNotContain("NaN", Encoding.UTF8.GetString(ReviewJson.Write(review)), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NaNInRequiredNumber_Throws()
    {
        Review review = SampleReviews.Rich() with { RiskHours = new Estimate(double.NaN, 0, 1) };
        Assert.Throws<InvalidOperationException>(() => ReviewJson.Write(review));
    }

    [Fact]
    public void Write_NameWithScript_HasNoAngleBracket()
    {
        string json = Encoding.UTF8.GetString(ReviewJson.Write(SampleReviews.Rich(houseName: "</script><b>é")));
        Assert.DoesNotContain("<", json, StringComparison.Ordinal);
        Assert.Contains("é", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_FractionOfASecond_IsKept()
    {
        Review review = SampleReviews.Empty();
        OffsetDateTime start = review.Period.From + Duration.FromMilliseconds(1500);
        review = review with { Coverage = new Coverage(168, 0, [new Gap(start, review.Period.To, 1, "noReadings")]) };
        Assert.Contains("2025-10-20T00:00:01.5+01:00", Encoding.UTF8.GetString(ReviewJson.Write(review)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(12.345678, 12.3457)]
    [InlineData(-0.00004, -0.00004)]
    [InlineData(0.000123456, 0.0001235)]
    [InlineData(0.1 + 0.2, 0.3)]
    [InlineData(0.0, 0.0)]
    [InlineData(1e-18, 1e-18)]
    public void Shorten_Number_KeepsMeaningfulDigits(double value, double expected)
        => Assert.Equal(expected, Rounding.Shorten(value), 15);

    private static JsonObject Root(Review review) => JsonNode.Parse(ReviewJson.Write(review))!.AsObject();
}
