using ClimateLens.Analysis.Comparison;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Which side was worse, by how much, and how sure that is.</summary>
public sealed class CompareBriefCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "compareBrief";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Which was worse?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ComparisonReport report = context.Report;
        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Both sides\" tabindex=\"0\"><table class=\"data\"><caption>Both sides</caption><thead><tr><td></td><th scope=\"col\">{Html.Name(context.FirstName)}</th><th scope=\"col\">{Html.Name(context.SecondName)}</th></tr></thead><tbody>");
        Row(body, Phrase.Of("Risk hours (range)"), report, s => s.RiskHours is { } hours ? Words.WithRange(hours) : DisplayUnits.NotKnown);
        Row(body, Phrase.Of("Waterings"), report, s => s.Waterings is { } all ? Words.Whole(all) : DisplayUnits.NotKnown);
        Row(body, Phrase.Of("of them over the leaves"), report, s => s.Waterings is null ? DisplayUnits.NotKnown : Words.Whole(s.WettedLeaves));
        Row(body, Phrase.Of("of these after the cut-off"), report, s => s.Waterings is null ? DisplayUnits.NotKnown : Words.Whole(s.Late));
        Row(body, Phrase.Of("Water given"), report, s => context.Units.Volume(s.Litres));
        Row(body, Phrase.Of("Ground cover"), report, s => Words.Share(s.Cover?.Value));
        body.Line($"</tbody></table></div>");
        return new CellContent(Sentence(context), body.ToHtml());
    }

    private static void Row(HtmlBuilder body, string name, ComparisonReport report, Func<ComparedSide, string> value)
        => body.Line($"<tr><th scope=\"row\">{name}</th><td>{value(report.First)}</td><td>{value(report.Second)}</td></tr>");

    private static string Sentence(CompareContext context)
    {
        if (context.Report.RiskHours is not { } risk)
        {
            return Phrase.Of("Which side had more risk hours is not known: one of them carries no total.");
        }

        string weather = context.Report.SameTime ? "" : Phrase.Of(" The weather was another: what it did is in the difference.");
        if (risk.Difference == 0)
        {
            return Phrase.Of($"Both had as many risk hours.{weather}");
        }

        (string worse, string better) = risk.Difference > 0 ? (context.FirstName, context.SecondName) : (context.SecondName, context.FirstName);
        string verdict = risk.Verdict switch
        {
            "beyondSensors" => Phrase.Of("That is beyond chance and beyond what the errors of both reviews explain."),
            "maybeOffset" => Phrase.Of("That is beyond chance, but their sensors part by too much on nights alike: hang both side by side before you believe it."),
            "withinSensors" => Phrase.Of("That is beyond chance, but the errors of both reviews could explain it."),
            "none" => Phrase.Of("With other days alike it could have come out the other way: no difference is shown."),
            _ => Phrase.Of("There are too few days to tell it from chance."),
        };
        return Phrase.Of($"{worse} had {DisplayUnits.Number(Math.Abs(risk.Difference), 0)} risk hours more than {better} in the {risk.Hours} hours known of both. {verdict}{weather}");
    }
}
