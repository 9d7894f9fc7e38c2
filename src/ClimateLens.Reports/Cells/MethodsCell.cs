using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>Methods and thresholds in force, each with its source and error.</summary>
public sealed class MethodsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "methods";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How was it worked out?");

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Provenance provenance = context.Review.Provenance;
        if (provenance.Methods.IsEmpty && provenance.Thresholds.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("The review names no method and no threshold."));
        }

        HtmlBuilder body = new();
        Thresholds(body, context);
        Methods(body, provenance);
        return new CellContent("", body.ToHtml());
    }

    private static void Thresholds(HtmlBuilder body, CellContext context)
    {
        if (context.Review.Provenance.Thresholds.IsEmpty)
        {
            return;
        }

        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Thresholds, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Thresholds in force</caption><thead><tr><th scope=\"col\">Threshold</th><th scope=\"col\">Value</th><th scope=\"col\">Source</th></tr></thead><tbody>");
        foreach (Threshold t in context.Review.Provenance.Thresholds)
        {
            body.Line($"<tr><th scope=\"row\">{PlainNames.Of(t.Name)}</th><td>{context.Units.Threshold(t.Value, t.Unit)}</td><td class=\"words\">{t.Source}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static void Methods(HtmlBuilder body, Provenance provenance)
    {
        if (provenance.Methods.IsEmpty)
        {
            return;
        }

        body.Line($"<dl class=\"pairs\">");
        foreach (MethodNote m in provenance.Methods)
        {
            body.Line($"<div><dt>{Words.Capital(m.What)}</dt><dd>{m.How} <span class=\"source\">Source: {m.Source}. Error and range: {m.Error}</span></dd></div>");
        }

        body.Line($"</dl>");
    }
}
