using ClimateLens.Analysis.Comparison;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>How the air differed, with what chance and sensors may do.</summary>
public sealed class DifferencesCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "differences";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How did the air differ?");

    /// <inheritdoc/>
    public IReadOnlyList<string> Files => ["differences.csv"];

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Report.Differences.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("Not known: no hour has readings of both sides."));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Differences, scrolls sideways\" tabindex=\"0\"><table class=\"data wide\"><caption>Means over {context.Report.Hours} hours that both have</caption><thead><tr><td></td><th scope=\"col\">{Html.Name(context.FirstName)}</th><th scope=\"col\">{Html.Name(context.SecondName)}</th><th scope=\"col\">First less second (range by chance)</th><th scope=\"col\">Sensors may do</th><th scope=\"col\">So</th></tr></thead><tbody>");
        foreach (MeanDifference d in context.Report.Differences)
        {
            string sensors = d.SensorError is { } error ? $"±{(d.Name == "airTemperatureC" ? context.Units.Difference(error) : CompareWords.Value(d.Name, error, context.Units))}" : DisplayUnits.NotKnown;
            body.Line($"<tr><th scope=\"row\">{CompareWords.Name(d.Name)}</th><td>{CompareWords.Value(d.Name, d.First, context.Units)}</td><td>{CompareWords.Value(d.Name, d.Second, context.Units)}</td><td>{CompareWords.Difference(d, context.Units)}</td><td>{sensors}</td><td>{CompareWords.Verdict(d.Verdict)}</td></tr>");
        }

        if (context.Report.RiskHours is { } risk)
        {
            body.Line($"<tr><th scope=\"row\">Risk hours in {risk.Hours} hours known of both</th><td>{risk.First}</td><td>{risk.Second}</td><td>{CompareWords.Signed(risk.Difference, 0)} ({CompareWords.Signed(risk.ByChance.Low, 0)} to {CompareWords.Signed(risk.ByChance.High, 0)})</td><td>{CompareWords.Signed(risk.BySensors.Low, 0)} to {CompareWords.Signed(risk.BySensors.High, 0)}</td><td>{CompareWords.Verdict(risk.Verdict)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        MeanDifference[] sure = [.. context.Report.Differences.Where(d => d.Verdict == "beyondSensors")];
        string sentence = sure.Length == 0 ? Phrase.Of("In nothing do they differ beyond what chance and both sensors may do.")
            : Phrase.Of($"Beyond chance and both sensors' errors: {string.Join(", ", sure.Select(d => Phrase.Of($"{CompareWords.InSentence(d.Name)} {(d.Difference.Value > 0 ? Phrase.Of("higher") : Phrase.Of("lower"))} in {context.FirstName}")))}.");
        return new CellContent(sentence, body.ToHtml());
    }
}
