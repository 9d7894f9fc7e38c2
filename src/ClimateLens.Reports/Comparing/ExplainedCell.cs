using System.Collections.Immutable;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Whose doing the risk hours of both sides were, side by side.</summary>
public sealed class ExplainedCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "explained";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What explains it?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ComparedSide first = context.Report.First, second = context.Report.Second;
        if (first.Causes is not { } a || second.Causes is not { } b)
        {
            string why = string.Join(' ', new[] { (Name: context.FirstName, first.WhyNoCauses), (Name: context.SecondName, second.WhyNoCauses) }.Where(s => s.Item2.Length > 0).Select(s => $"{s.Name}: {s.Item2}"));
            return CellContent.Unanswered(Phrase.Of($"Not known: the causes of both sides must be told first. {why}"));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Causes side by side\" tabindex=\"0\"><table class=\"data\"><caption>Risk hours by cause</caption><thead><tr><th scope=\"col\">Cause</th><th scope=\"col\">{Html.Name(context.FirstName)}</th><th scope=\"col\">{Html.Name(context.SecondName)}</th><th scope=\"col\">First less second</th></tr></thead><tbody>");
        foreach (string cause in a.Select(c => c.Name).Union(b.Select(c => c.Name)))
        {
            body.Line($"<tr><th scope=\"row\">{Words.Capital(ChangeWords.Cause(cause))}</th><td>{Of(a, cause)}</td><td>{Of(b, cause)}</td><td>{CompareWords.Signed(Hours(a, cause) - Hours(b, cause), 1)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        string most = a.Select(c => c.Name).Union(b.Select(c => c.Name)).MaxBy(c => Math.Abs(Hours(a, c) - Hours(b, c))) ?? "";
        double by = Hours(a, most) - Hours(b, most);
        string sentence = Math.Abs(by) < 1 ? Phrase.Of("No cause differs by as much as an hour.")
            : Phrase.Of($"The largest part is {ChangeWords.Cause(most)}: {DisplayUnits.Number(Math.Abs(by), 0)} risk hours more in {(by > 0 ? context.FirstName : context.SecondName)}.");
        return new CellContent(sentence, body.ToHtml(), context.Report.SameTime
            ? Phrase.Of("Both had the same weather outside; what is left to it differs by houses and by what was not logged. Shares and their errors are those of each house's own page.")
            : Phrase.Of("The weather differs between both times. Shares and their errors are those of each page."));
    }

    private static double Hours(ImmutableArray<Cause> causes, string name) => causes.FirstOrDefault(c => c.Name == name)?.RiskHours.Value ?? 0;

    private static string Of(ImmutableArray<Cause> causes, string name)
        => causes.FirstOrDefault(c => c.Name == name)?.RiskHours is { } hours ? $"{DisplayUnits.Number(hours.Value, 1)} ({Words.Range(hours)})" : DisplayUnits.NotKnown;
}
