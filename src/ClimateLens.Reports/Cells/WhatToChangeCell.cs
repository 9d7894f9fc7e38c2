using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Cells;

/// <summary>The findings that matter most; no more than fit a first screen.</summary>
public sealed class WhatToChangeCell : IReportCell
{
    /// <summary>How many findings the first screen takes.</summary>
    public const int Most = 3;

    /// <inheritdoc/>
    public string Name => "change";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What to change");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["whatIfsAndShares", "houseBalance"], Files = [DataFiles.Findings, DataFiles.WhatIfs] };

    /// <inheritdoc/>
    public IReadOnlyList<CellParameter> Parameters => [new("most", ParameterKind.WholeNumber, "how many findings stand here", 1, 20)];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Table;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        List<Finding> findings = [.. context.Review.Findings.OrderBy(f => f.Rank)];
        if (findings.Count == 0)
        {
            return CellContent.Unanswered(context.Review.Coverage.HoursWithData == 0
                ? Phrase.Of("Without readings no advice can be given.")
                : Phrase.Of("Nothing was found that the data of this period ask to change."));
        }

        HtmlBuilder body = new();
        int most = context.Values.WholeNumber("most", Most);
        body.Line(FindingMarkup.List(findings.Take(most), context));
        if (findings.Count > most)
        {
            body.Line($"<p class=\"note screen\"><a href=\"index.html#otherFindings\">{Words.Count(findings.Count - most, "more finding", "more findings")}</a> further down.</p>");
        }

        return new CellContent("", body.ToHtml());
    }
}
