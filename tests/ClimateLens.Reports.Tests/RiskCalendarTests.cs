using System.Text.RegularExpressions;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

public partial class RiskCalendarTests
{
    [Fact]
    public void Calendar_WeekOf25Hours_HasASecondOneOClock()
    {
        string body = Body(SampleReviews.Rich("2025-W43"));
        Assert.Equal(25 + 3, Regex.Count(Head(body), "<th "));
        Assert.Contains("class=\"minor\">01</th><th scope=\"col\" class=\"minor\">01b</th><th scope=\"col\" class=\"minor\">02</th>", body, StringComparison.Ordinal);
        Assert.Equal(169, HourCells().Count(body));
        Assert.Equal(6, Regex.Count(body, "<td class=\"none\"")); // the other six days lack the second 01
        Assert.Contains("after the clock was put back", body, StringComparison.Ordinal);
    }

    [Fact]
    public void Calendar_WeekOf23Hours_ShowsTheMissingHour()
    {
        string body = Body(SampleReviews.Rich("2026-W13"));
        Assert.Equal(24 + 3, Regex.Count(Head(body), "<th "));
        Assert.Equal(167, HourCells().Count(body));
        Assert.Single(Regex.Matches(body, "<td class=\"none\""));
        Assert.Contains("the clock went forward", body, StringComparison.Ordinal);
    }

    [Fact]
    public void Calendar_UnknownHours_DifferFromHoursWithoutRisk()
    {
        string body = Body(SampleReviews.Rich());
        Assert.Equal(5, Regex.Count(body, "<td class=\"ru[ \"]"));
        Assert.Contains("<td class=\"sum\">5</td></tr>", body, StringComparison.Ordinal);
    }

    [Fact]
    public void Calendar_Waterings_StandInTheirHour()
    {
        string body = Body(SampleReviews.Rich());
        Assert.Matches("title=\"Mon 13 Oct 15:00: [^\"]*watered late over the leaves\"", body);
        Assert.Matches("title=\"Tue 14 Oct 09:00: [^\"]*watered over the leaves\"", body);
        Assert.Matches("title=\"Thu 16 Oct 10:00: [^\"]*watered, leaves dry\"", body);
        Assert.Matches("title=\"Sat 18 Oct 11:00: [^\"]*watered\"", body);
        Assert.Equal(6, Regex.Count(body.Split("<ul class=\"legend\"")[0], "<svg "));
    }

    [Fact]
    public void Calendar_WetLeaves_AreMarkedAndExplained()
    {
        Review dry = SampleReviews.Rich();
        dry = dry with { Hours = [.. dry.Hours.Select(h => h with { Wet = false })] };
        Review wet = dry with { Hours = dry.Hours.SetItem(20, dry.Hours[20] with { Wet = true }) };
        Assert.DoesNotContain("leaves wet", Body(dry), StringComparison.Ordinal);
        Assert.Matches("title=\"Mon 13 Oct 20:00: [^\"]*, leaves wet\"", Body(wet));
        Assert.Contains("leaves wet for at least half of the hour", Body(wet), StringComparison.Ordinal);
        Assert.Equal(1, WeekFacts.Of(wet).WetHours);
    }

    [Fact]
    public void Calendar_DayTotals_AddUpToTheHoursMoreLikelyThanNot()
    {
        Review review = SampleReviews.Rich();
        int sum = Totals().Matches(Body(review)).Sum(m => int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(review.Hours.Count(h => h.Risk == true), sum);
    }

    [Theory]
    [InlineData(0.0, RiskLevel.None)]
    [InlineData(0.049, RiskLevel.None)]
    [InlineData(0.05, RiskLevel.Possible)]
    [InlineData(0.5, RiskLevel.Likely)]
    [InlineData(0.51, RiskLevel.Likely)]
    [InlineData(0.95, RiskLevel.NearlySure)]
    [InlineData(1.0, RiskLevel.NearlySure)]
    public void Level_Probability_FollowsTheSteps(double probability, RiskLevel expected)
    {
        ReviewHour hour = SampleReviews.Rich().Hours[0] with { RiskProbability = probability };
        Assert.Equal(expected, RiskLevels.Of(hour));
    }

    private static string Body(Review review) => Rendered.Cell(new RiskCalendarCell(), review).Body.ToString();

    private static string Head(string body) => body[body.IndexOf("<thead>", StringComparison.Ordinal)..body.IndexOf("</thead>", StringComparison.Ordinal)];

    [GeneratedRegex("<td class=\"r[0123u]( n)?( w)?\"")]
    private static partial Regex HourCells();

    [GeneratedRegex("<td class=\"sum\">(\\d+)</td><td")]
    private static partial Regex Totals();
}
