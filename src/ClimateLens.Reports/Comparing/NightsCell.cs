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
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Nights, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Nights: {Html.Name(context.FirstName)}, then {Html.Name(context.SecondName)}</caption><thead><tr><th scope=\"col\">Evening of</th><th scope=\"col\">Risk hours</th><th scope=\"col\">Mean RH</th><th scope=\"col\">Least margin</th></tr></thead><tbody>");
        foreach (NightPair n in context.Report.Nights)
        {
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Day(n.Evening)}</th><td>{n.FirstRiskHours}, {n.SecondRiskHours}</td><td>{DisplayUnits.Number(n.FirstHumidityPct, 0)}, {DisplayUnits.Number(n.SecondHumidityPct, 0)} %</td><td>{context.Units.Difference(n.FirstLeastMarginK)}, {context.Units.Difference(n.SecondLeastMarginK)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        int first = context.Report.Nights.Count(n => n.FirstRiskHours > n.SecondRiskHours), second = context.Report.Nights.Count(n => n.SecondRiskHours > n.FirstRiskHours);
        return new CellContent(Phrase.Of($"Of {Words.Count(context.Report.Nights.Length, "night", "nights")}, {first} had more risk hours in {context.FirstName} and {second} in {context.SecondName}."), body.ToHtml());
    }
}
