using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How sure the risk hours are: what was measured, worked out and assumed, and which of it brings the error.</summary>
public sealed class CertaintyCell : IReportCell
{
    private const double LeastShown = 0.02; // of the variance; smaller ones stand in the data

    /// <inheritdoc/>
    public string Name => "certainty";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How sure is that, and what would make it surer?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["rangeOfRiskHours", "whatTheErrorComesFrom"], Files = [DataFiles.ErrorShares] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["riskHours"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        if (review.RiskHours is not { } risk || review.LeafBasis is not { } basis)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("riskHours", Phrase.Of("It takes both air temperature and humidity."))}"));
        }

        HtmlBuilder body = new();
        if (!review.ErrorShares.IsEmpty)
        {
            Shares(body, review.ErrorShares);
        }

        Leaves(body, review.LeafScores, context.Units);
        body.Line($"<details class=\"screen\"><summary>What was measured, worked out and assumed</summary>");
        List(body, Phrase.Of("Measured"), [Phrase.Of("Air: the house's temperature and humidity."), .. basis.Measured]);
        List(body, Phrase.Of("Worked out"), basis.Modelled);
        List(body, Phrase.Of("Assumed"), basis.Assumed);
        body.Line($"</details>");
        string most = review.ErrorShares.IsEmpty
            ? Phrase.Of(" No single error that is likely would change it.")
            : Phrase.Of($" {(review.ErrorShares[0].Share >= 0.5 ? Phrase.Of("Most") : Phrase.Of("The largest part"))} of the doubt comes from {CauseWords.Of(review.ErrorShares[0].Cause)}.");
        return new CellContent(Phrase.Of($"Risk hours lie between {Words.Range(risk)} with nine chances in ten.{most}"), body.ToHtml(), Phrase.Of("The range holds what the sensors' accuracy and the assumptions leave open; that one sensor stands for the whole house is not in it."));
    }

    private static void Leaves(HtmlBuilder body, ImmutableArray<LeafScore> scores, DisplayUnits units)
    {
        foreach (LeafScore score in scores)
        {
            string range = score is { BiasLowK: { } low, BiasHighK: { } high } ? Phrase.Of($" ({Signed(low, units)} to {Signed(high, units)})") : "";
            body.Line($"<p class=\"note\">Leaf model against the leaf sensor by {(score.Part == "day" ? Phrase.Of("day") : Phrase.Of("night"))}: {Signed(score.BiasK, units)} on the mean{range}, off by {units.Difference(score.RmseK)} root mean square, {DisplayUnits.Number(score.Hours, 0)} hours. The sensor rules where it tells.</p>");
        }
    }

    private static string Signed(double kelvin, DisplayUnits units) => $"{(kelvin < 0 ? "\u2212" : "+")}{units.Difference(Math.Abs(kelvin))}";

    private static void Shares(HtmlBuilder body, ImmutableArray<ErrorShare> shares)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Where the error comes from\" tabindex=\"0\"><table class=\"data\"><caption>Where the error of the risk hours comes from</caption><thead><tr><th scope=\"col\">Cause</th><th scope=\"col\">Hours, up or down</th><th scope=\"col\">Part of the error</th></tr></thead><tbody>");
        foreach (ErrorShare share in shares.Where(s => s.Share >= LeastShown))
        {
            body.Line($"<tr><th scope=\"row\">{Words.Capital(CauseWords.Of(share.Cause))}</th><td>{DisplayUnits.Number(share.Hours, 1)}</td><td>{Words.Share(share.Share)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static void List(HtmlBuilder body, string heading, IEnumerable<string> lines)
    {
        if (lines.Any())
        {
            body.Line($"<h3>{heading}</h3>");
            body.Line($"<ul>");
            foreach (string line in lines)
            {
                body.Line($"<li>{line}</li>");
            }

            body.Line($"</ul>");
        }
    }
}
