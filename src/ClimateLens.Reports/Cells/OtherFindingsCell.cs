using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Cells;

/// <summary>The findings that the first screen has no room for.</summary>
public sealed class OtherFindingsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "otherFindings";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What else was found?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["whatIfsAndShares"], Files = [DataFiles.Findings] };

    /// <inheritdoc/>
    public IReadOnlyList<CellParameter> Parameters => [new("after", ParameterKind.WholeNumber, "how many findings stand elsewhere", 0, 20)];

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        List<Finding> rest = [.. context.Review.Findings.OrderBy(f => f.Rank).Skip(context.Values.WholeNumber("after", WhatToChangeCell.Most))];
        return rest.Count == 0 ? CellContent.Nothing : new CellContent("", FindingMarkup.List(rest, context));
    }
}
