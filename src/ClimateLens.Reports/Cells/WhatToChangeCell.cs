using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>The findings that matter most; no more than fit a first screen.</summary>
public sealed class WhatToChangeCell : IReportCell
{
    /// <summary>How many findings the first screen takes.</summary>
    public const int Most = 3;

    /// <inheritdoc/>
    public string Name => "change";

    /// <inheritdoc/>
    public string Heading => "What to change";

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        List<Finding> findings = [.. context.Review.Findings.OrderBy(f => f.Rank)];
        if (findings.Count == 0)
        {
            return CellContent.Unanswered(context.Review.Coverage.HoursWithData == 0
                ? "Without readings no advice can be given."
                : "Nothing was found that the data of this period ask to change.");
        }

        HtmlBuilder body = new();
        body.Line(FindingMarkup.List(findings.Take(Most), context));
        if (findings.Count > Most)
        {
            body.Line($"<p class=\"note\"><a href=\"#otherFindings\">{Words.Count(findings.Count - Most, "more finding", "more findings")}</a> further down.</p>");
        }

        return new CellContent("", body.ToHtml());
    }
}
