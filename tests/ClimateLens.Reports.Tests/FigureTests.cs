using System.Text.Json;
using System.Text.Json.Nodes;
using ClimateLens.Reports.Charts;
using Plotly.NET;

namespace ClimateLens.Reports.Tests;

/// <summary>Figures as JSON, against the serialiser of Plotly.NET itself.</summary>
public sealed class FigureTests
{
    private static readonly WeekChart Full = new(
        [
            new ChartPanel("Air, °C", [new HourLine("Air <1>", "#112233", "solid", [20.5, null, 19], 1), new HourLine("Leaf", "#445566", "dash", [19.5, 18, null], 1)], new ChartLevel(18.25, "dot"))
            {
                Usual = (0, 30),
            },
            new ChartPanel("Humidity, %", [new HourLine("Humidity", "#778899", "dot", [80, 90.25, null], 0) { Band = 3 }]),
        ],
        ["Mo 0", "Mo 1", "Mo 2"],
        [(0, "Mo")],
        [(0, 1), (2, 3)],
        [new WateringMark(1.5, true, "late"), new WateringMark(2.25, false, "early")]);

    public static TheoryData<bool, bool> Kinds => new() { { true, true }, { true, false }, { false, true }, { false, false } };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Layout_IsThatOfThePackagesOwnSerialiser(bool many, bool watered)
    {
        WeekChart chart = Chart(many, watered);
        JsonNode ours = JsonNode.Parse(FigureJson.Write(chart))!["layout"]!;
        JsonNode theirs = JsonNode.Parse(GenericChart.toFigureJson(FigureMaker.Build(chart)))!["layout"]!;
        Assert.True(JsonNode.DeepEquals(theirs, ours), $"{theirs}\n{ours}");
        Assert.Equal(chart.Panels.Count + (watered ? 1 : 0), ours.AsObject().Count(p => p.Key.StartsWith("yaxis", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Traces_AreThoseOfThePackagesOwnSerialiser_ButForTheirValues(bool many, bool watered)
    {
        WeekChart chart = Chart(many, watered);
        JsonArray theirs = JsonNode.Parse(GenericChart.toFigureJson(FigureMaker.Build(chart)))!["data"]!.AsArray();
        JsonArray written = JsonNode.Parse(FigureJson.Write(chart))!["data"]!.AsArray();
        for (int i = 0; i < theirs.Count; i++)
        {
            foreach ((string key, JsonNode? value) in theirs[i]!.AsObject().Where(p => p.Key is not ("x" or "y" or "marker")))
            {
                Assert.True(JsonNode.DeepEquals(value, written[i]![key]), $"{i} {key}: {value} {written[i]![key]}");
            }
        }

        Assert.Equal("scatter", (string?)written[0]!["type"]);
        Assert.Equal("#112233", (string?)written[0]!["line"]!["color"]);
        Assert.Equal(chart.Panels.Sum(p => p.Lines.Count) + (watered ? 1 : 0) + (many ? 1 : 0), written.Count); // the band is one more
    }

    [Fact]
    public void Write_CannotEndTheScriptThatHoldsIt()
        => Assert.DoesNotContain("<", FigureJson.Write(Full), StringComparison.Ordinal);

    [Fact]
    public void Attribute_OfAnUnknownKind_IsRefused()
    {
        using Utf8JsonWriter writer = new(Stream.Null);
        Assert.Throws<NotSupportedException>(() => FigureValue.Write(writer, new Version(1, 2)));
    }

    private static WeekChart Chart(bool many, bool watered) => Full with
    {
        Panels = many ? Full.Panels : [Full.Panels[0]],
        Waterings = watered ? Full.Waterings : [],
    };
}
