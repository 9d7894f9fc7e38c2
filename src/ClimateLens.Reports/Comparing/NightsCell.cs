using ClimateLens.Analysis.Comparison;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Both sides night by night.</summary>
public sealed class NightsCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "nights";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Night by night");

    /// <inheritdoc/>
    public IReadOnlyList<string> Files => ["nights.csv"];

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Report.Nights.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("There is no night in the period."));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Nights, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Nights, over the hours known of both</caption><thead><tr><td rowspan=\"2\"></td><th scope=\"colgroup\" colspan=\"2\">Risk hours</th><th scope=\"colgroup\" colspan=\"2\">Mean RH</th><th scope=\"colgroup\" colspan=\"2\">Least margin</th><th scope=\"col\" rowspan=\"2\">Hours known of both</th></tr>");
        body.Add($"<tr>");
        for (int i = 0; i < 3; i++)
        {
            body.Add($"<th scope=\"col\">{Html.Name(context.FirstName)}</th><th scope=\"col\">{Html.Name(context.SecondName)}</th>");
        }

        body.Line($"</tr></thead><tbody>");
        foreach (NightPair n in context.Report.Nights)
        {
            body.Add($"<tr><th scope=\"row\">{LocalTimes.Day(n.Evening)}</th><td>{Hours(n.FirstRiskHours)}</td><td>{Hours(n.SecondRiskHours)}</td><td>{DisplayUnits.Humidity(n.FirstHumidityPct)}</td><td>{DisplayUnits.Humidity(n.SecondHumidityPct)}</td>");
            body.Line($"<td>{context.Units.Difference(n.FirstLeastMarginK)}</td><td>{context.Units.Difference(n.SecondLeastMarginK)}</td><td>{n.CommonHours} of {n.Hours}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        NightPair[] told = [.. context.Report.Nights.Where(n => n is { FirstRiskHours: not null, SecondRiskHours: not null })];
        int first = told.Count(n => n.FirstRiskHours > n.SecondRiskHours), second = told.Count(n => n.SecondRiskHours > n.FirstRiskHours);
        return new CellContent(Phrase.Of($"Of {Words.Count(told.Length, "night", "nights")} of which both tell half the hours or more, {first} had more risk hours in {context.FirstName} and {second} in {context.SecondName}."), body.ToHtml());
    }

    private static string Hours(int? hours) => hours is { } known ? Words.Whole(known) : DisplayUnits.NotKnown;
}
