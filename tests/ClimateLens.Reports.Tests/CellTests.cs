using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Cells;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public class CellTests
{
    public static TheoryData<string> Names => [.. HouseWeekCells.All.Where(c => c.Name is not ("air" or "margin")).Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Cell_RichReview_MatchesGolden(string name)
        => GoldenFile.Check($"rich.{name}.html", Rendered.Fragment(Rendered.Cell(Get(name), SampleReviews.Rich())));

    [Theory]
    [InlineData("brief")]
    [InlineData("hours")]
    [InlineData("methods")]
    [InlineData("waterings")]
    public void Cell_UsUnits_MatchesGolden(string name)
        => GoldenFile.Check($"us.{name}.html", Rendered.Fragment(Rendered.Cell(Get(name), SampleReviews.Rich(), UnitSystem.Us)));

    [Fact]
    public void EveryCell_EmptyReview_MatchesGolden()
    {
        IEnumerable<string> parts = HouseWeekCells.All
            .Where(c => c.Name is not ("calendar" or "hours")) // long, and alike for every hour
            .Select(c => $"== {c.Name}\n{Rendered.Fragment(Rendered.Cell(c, SampleReviews.Empty()))}");
        GoldenFile.Check("empty.all.html", string.Concat(parts));
    }

    [Fact]
    public void AirSentence_RichReview_SaysTheExtremes()
    {
        Review review = SampleReviews.Rich();
        string sentence = Rendered.Cell(Get("air"), review).Sentence;
        ReviewHour warmest = review.Hours.Where(h => h.AirTemperatureC is not null).MaxBy(h => h.AirTemperatureC)!;
        Assert.Contains($"{warmest.AirTemperatureC:F1}\u00A0°C", sentence, StringComparison.Ordinal);
        Assert.Contains(Units.LocalTimes.Moment(warmest.Start), sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Brief_WaterByDripOnly_ShowsTheLongestRun()
    {
        Review review = SampleReviews.Rich();
        review = review with { Waterings = [.. review.Waterings!.Value.Where(w => w.WetsLeaves == false)] };
        string body = Rendered.Cell(Get("brief"), review).Body.ToString();
        Assert.Contains("Longest run of risk hours", body, StringComparison.Ordinal);
        Assert.DoesNotContain("Late wettings", body, StringComparison.Ordinal);
    }

    [Fact]
    public void Brief_RiskNotKnown_GivesTheReviewsReason()
    {
        Review review = SampleReviews.Rich() with { RiskHours = null, NotKnown = [new Unknown("riskHours", "No humidity sensor.")] };
        Assert.Contains("No humidity sensor.", Rendered.Cell(Get("brief"), review).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void SecondOpinion_NothingNamed_SaysYes_AndNotJudged_SaysWhy()
    {
        Review review = SampleReviews.Rich();
        SecondOpinionReport calm = review.SecondOpinion! with { Sensors = [.. review.SecondOpinion.Sensors.Select(s => s with { Suspect = 0, Suspects = [], Shift = null })] };
        CellContent cell = Rendered.Cell(Get("secondOpinion"), review with { SecondOpinion = calm });
        Assert.StartsWith("Yes: all 3 sensors", cell.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("<h3>", cell.Body.ToString(), StringComparison.Ordinal);
        Assert.Contains("Not judged: Leaf temperature. Fewer than 21 days", cell.Body.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void SecondOpinion_NotKnown_GivesTheReviewsReason()
        => Assert.Equal("Not known. Too new.", Rendered.Cell(Get("secondOpinion"), SampleReviews.Rich() with { SecondOpinion = null, NotKnown = [new Unknown("secondOpinion", "Too new.")] }).Sentence);

    [Fact]
    public void WhatToChange_FourFindings_ShowsThreeAndLinksTheRest()
    {
        CellContent first = Rendered.Cell(Get("change"), SampleReviews.Rich());
        CellContent rest = Rendered.Cell(Get("otherFindings"), SampleReviews.Rich());
        Assert.Equal(3, first.Body.ToString().Split("<li id=\"finding-").Length - 1);
        Assert.Contains("href=\"index.html#otherFindings\"", first.Body.ToString(), StringComparison.Ordinal);
        Assert.Contains("finding-4", rest.Body.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OtherFindings_ThreeFindings_LeavesThePartOut()
    {
        Review review = SampleReviews.Rich();
        Assert.True(Rendered.Cell(Get("otherFindings"), review with { Findings = review.Findings[..3] }).IsNothing);
    }

    [Fact]
    public void Waterings_NoneNoted_DiffersFromNotKnown()
    {
        string none = Rendered.Cell(Get("waterings"), SampleReviews.Rich() with { Waterings = [] }).Sentence;
        string unknown = Rendered.Cell(Get("waterings"), SampleReviews.Rich() with { Waterings = null }).Sentence;
        Assert.Equal("No watering is noted in this period.", none);
        Assert.StartsWith("Not known.", unknown, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "Under the dashed line, at 1.0\u00A0K,")]
    [InlineData(UnitSystem.Us, "Under the dashed line, at 1.8\u00A0°F,")]
    public void Margin_LimitInForce_IsDrawnAndNamed(UnitSystem units, string expected)
        => Assert.Contains(expected, Rendered.Cell(Get("margin"), SampleReviews.Rich(), units).Body.ToString(), StringComparison.Ordinal);

    [Fact]
    public void Sensors_FilesAndClocks_AreToldInWords_AndNamesAreEncoded()
    {
        string body = Rendered.Cell(Get("sensors"), SampleReviews.Rich()).Body.ToString();
        Assert.Contains("<summary><bdi>exports/house-1-2025-10.csv</bdi>: 8,928 rows read, 3 set aside</summary>", body, StringComparison.Ordinal);
        Assert.Contains("8,928 rows read = 8,900 accepted + 3 set aside + 20 repeated + 5 blank", body, StringComparison.Ordinal);
        Assert.Contains("2 rows set aside, the time could not be read: lines 3, 5", body, StringComparison.Ordinal);
        Assert.Contains("a row every 5 min (99.9\u00A0% of the steps)", body, StringComparison.Ordinal);
        Assert.Contains("2 gaps of 6.5 h in all: Wed 15 Oct 11:55 to Wed 15 Oct 17:00", body, StringComparison.Ordinal);
        Assert.Contains("Pump &lt;3&gt;, column 9", body, StringComparison.Ordinal);
        Assert.Contains("read as windows-1252, semicolon between fields, comma as decimal mark, point between thousands; times as <bdi>dd-MM-yyyy HH:mm</bdi>", body, StringComparison.Ordinal);
        Assert.Contains("<strong>What to do:</strong> Take timeZone out", body, StringComparison.Ordinal);
        Assert.Contains("its clock: see above", body, StringComparison.Ordinal);
        Assert.Contains("the store has no sheet of this file", body, StringComparison.Ordinal);
    }

    [Fact]
    public void Sensors_UsUnits_ShowsTemperaturesOfAFileInFahrenheit()
        => Assert.Contains("<td>54.3</td><td>64.0</td><td>79.0</td><td>°F</td>", Rendered.Cell(Get("sensors"), SampleReviews.Rich(), UnitSystem.Us).Body.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("import.time", SetAsideKind.Row, 1, "1 row set aside, the time could not be read")]
    [InlineData("import.somethingNew", SetAsideKind.Row, 2, "2 rows set aside, something new")]
    [InlineData("import.number", SetAsideKind.Cell, 3, "3 values not read, no number")]
    [InlineData("import.conflict", SetAsideKind.Overruled, 1, "older values overruled 1 time, another value than an older file gave for the time; the newer one stands")]
    public void Reason_Code_ReadsAsWords(string code, SetAsideKind kind, int count, string words)
        => Assert.Equal(words, ReasonWords.Of(new SetAsideReason(code, kind, count, [1])));

    [Theory]
    [InlineData("hours.wet", "Whether leaves were wet in some hours")]
    [InlineData("airTemperature", "Air temperature")]
    [InlineData("some.newKey", "Some: new key")]
    public void PlainName_Key_ReadsAsWords(string key, string expected) => Assert.Equal(expected, PlainNames.Of(key));

    private static IReportCell Get(string name) => HouseWeekCells.All.Single(c => c.Name == name);
}
