using System.Text.Json;
using System.Text.Json.Nodes;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.TestKit;
using Json.Schema;
using NodaTime;

namespace ClimateLens.Reports.Tests;

/// <summary>docs/review.schema.json holds for every review that we write, and for nothing that has been bent.</summary>
public class ReviewSchemaTests
{
    private static readonly string SchemaPath = Repository.PathOf("docs/review.schema.json");

    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(SchemaPath));

    public static TheoryData<string> Weeks => ["2025-W42", "2025-W43", "2026-W13"];

    [Theory]
    [MemberData(nameof(Weeks))]
    public void Schema_RichReview_Holds(string week) => AssertHolds(ReviewJson.Write(SampleReviews.Rich(week)));

    [Fact]
    public void Schema_EmptyReview_Holds() => AssertHolds(ReviewJson.Write(SampleReviews.Empty()));

    [Fact]
    public void Schema_ReviewOfThePipeline_Holds()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W43").WithAir(SyntheticHouse.AutumnAir).Input);
        Assert.Equal(169, review.Hours.Count(h => h.RiskProbability is not null));
        AssertHolds(ReviewJson.Write(review));
        Assert.Empty(Rendered.Page(review).FailedCells);
    }

    [Fact]
    public void Schema_PipelineWithoutReadings_Holds()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W43").Input);
        AssertHolds(ReviewJson.Write(review));
        Assert.Empty(Rendered.Page(review).FailedCells);
    }

    [Fact]
    public void Schema_PartsOfLaterIssues_Hold()
    {
        Estimate estimate = new(3, 1, 5);
        Review rich = SampleReviews.Rich();
        AssertHolds(ReviewJson.Write(rich with
        {
            WetPeriods = [new WetPeriod(rich.Hours[0].Start, rich.Hours[9].Start, 9, 13.2, 0.4, "moderate"), new WetPeriod(rich.Hours[20].Start, rich.Hours[22].Start, 2, 13.2, null, null)],
            Canopy = new CanopyState(new Estimate(0.8, 0.7, 0.9), new CanopyClosure(new LocalDate(2025, 10, 20), new LocalDate(2025, 10, 15), new LocalDate(2025, 11, 1))),
            WhatIfs = [new WhatIf("all", estimate, estimate)],
            Causes = [new Cause("weather", estimate)],
            Outlook = SampleCauses.Outlook,
        }));
    }

    [Theory]
    [InlineData("riskHours", "null in a place that may be unknown", true)]
    [InlineData("hours", "null in a place that must be known", false)]
    public void Schema_NullInPlace_HoldsOnlyWhereUnknownIsAllowed(string key, string why, bool holds)
    {
        JsonObject root = Rich();
        root[key] = null;
        Assert.True(Holds(root) == holds, why);
    }

    public static TheoryData<string, Action<JsonObject>> Broken => new()
    {
        { "an unknown key", r => r["more"] = 1 },
        { "an unknown key in an hour", r => r["hours"]![3]!["temperature"] = 1 },
        { "a missing key", r => r.Remove("findings") },
        { "a missing key in an hour", r => r["hours"]![3]!.AsObject().Remove("dewPointC") },
        { "a time without offset", r => r["period"]!["from"] = "2025-10-13T00:00:00" },
        { "a number as text", r => r["hours"]![3]!["vpdKPa"] = "0.4" },
        { "a probability over one", r => r["hours"]![3]!["riskProbability"] = 1.2 },
        { "an unknown method", r => r["waterings"]![0]!["method"] = "OverheadBoom" },
        { "an unknown reason of a gap", r => r["coverage"]!["gaps"]![0]!["why"] = "lost" },
        { "a hash that is none", r => r["provenance"]!["inputHash"] = "abc" },
        { "an unknown verdict on a clock", r => r["clocks"]![0]!["check"]!["verdict"] = "fine" },
        { "an unknown key in a sheet", r => r["imports"]![0]!["found"]!["more"] = 1 },
        { "a share over one", r => r["imports"]![0]!["found"]!["stepShare"] = 1.5 },
        { "an estimate without range", r => r["riskHours"] = 4 },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Schema_BentReview_Fails(string what, Action<JsonObject> bend)
    {
        JsonObject root = Rich();
        Assert.True(Holds(root));
        bend(root);
        Assert.False(Holds(root), what);
    }

    [Fact]
    public void Schema_EveryObject_IsStrictAndDescribed()
    {
        JsonObject schema = JsonNode.Parse(File.ReadAllText(SchemaPath))!.AsObject();
        foreach ((string name, JsonNode? part) in schema["$defs"]!.AsObject())
        {
            Assert.True(part!["description"] is not null, name);
            Assert.True(part["type"]!.ToString() != "object" || part["additionalProperties"]!.GetValue<bool>() == false, name);
        }

        Assert.False(schema["additionalProperties"]!.GetValue<bool>());
    }

    private static JsonObject Rich() => JsonNode.Parse(ReviewJson.Write(SampleReviews.Rich()))!.AsObject();

    private static bool Holds(JsonObject root) => Schema.Evaluate(JsonSerializer.SerializeToElement(root)).IsValid;

    internal static void AssertHolds(byte[] json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        EvaluationResults results = Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Take(10)));
    }
}
