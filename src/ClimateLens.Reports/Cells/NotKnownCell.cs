using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>What the data cannot tell, and why.</summary>
public sealed class NotKnownCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "notKnown";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What is not known?");

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.NotKnown.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("Nothing that was asked of the data stayed open."));
        }

        HtmlBuilder body = new();
        body.Line($"<dl class=\"pairs\">");
        foreach (Unknown unknown in context.Review.NotKnown)
        {
            body.Line($"<div><dt>{PlainNames.Of(unknown.What)}</dt><dd>{unknown.Why}</dd></div>");
        }

        return new CellContent("", body.Line($"</dl>").ToHtml());
    }
}
