using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>Which records were kept beside the readings.</summary>
public sealed class RecordsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "records";

    /// <inheritdoc/>
    public string Heading => "Which records were kept?";

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["records"];

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Records is not { Count: > 0 } records)
        {
            return CellContent.Unanswered("No record of the crop was read for this period.");
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Records\" tabindex=\"0\"><table class=\"data\"><caption>Records of the period</caption><thead><tr><th scope=\"col\">Record</th><th scope=\"col\">Rows</th><th scope=\"col\">Note</th></tr></thead><tbody>");
        foreach ((string kind, RecordCount record) in records)
        {
            body.Line($"<tr><th scope=\"row\">{PlainNames.Of(kind)}</th><td>{record.Count}</td><td class=\"words\">{record.Note}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        int rows = records.Values.Sum(r => r.Count);
        return new CellContent($"{Words.Count(rows, "row", "rows")} of {Words.Count(records.Count, "kind of record", "kinds of record")} fall into this period.", body.ToHtml());
    }
}
