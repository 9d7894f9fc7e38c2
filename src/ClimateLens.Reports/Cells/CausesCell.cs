using System.Collections.Immutable;
using ClimateLens.Analysis.Causes;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Whose doing the risk hours were, and what would have been otherwise.</summary>
public sealed class CausesCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "causes";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Who put the humidity there, and what would have helped?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["houseBalance", "whatIfsAndShares"], Files = [DataFiles.Causes, DataFiles.WhatIfs, DataFiles.HouseBalance, DataFiles.WateringEffect], Channels = ["airTemperature", "relativeHumidity", "outsideTemperature", "outsideHumidity", "globalRadiation", "windSpeed", "ventPosition"], Records = [RecordKind.Waterings], RestsOnLeaves = true };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["causes"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        HtmlBuilder body = new();
        if (review.Causes is { } causes && review.WhatIfs is { } whatIfs)
        {
            Shares(body, causes);
            Otherwise(body, whatIfs);
            body.Line($"<p class=\"note\">{ReplayRates.Sentence}</p>");
            foreach (Unknown unknown in review.NotKnown.Where(u => u.What.StartsWith("whatIfs.", StringComparison.Ordinal)))
            {
                body.Line($"<p class=\"note\">{Words.Capital(ChangeWords.Of(unknown.What["whatIfs.".Length..]))}: not known. {unknown.Why}</p>");
            }
        }

        body.Line($"<div class=\"screen\">"); // for a consultant at the screen; a wall needs the tables only
        BalanceMarkup.Matched(body, review.MatchedWaterings);
        BalanceMarkup.Balance(body, review.HouseBalance);
        body.Line($"</div>");
        return review.Causes is { } told
            ? new CellContent(Sentence(review.RiskHours!, told), body.ToHtml(), Method)
            : new CellContent(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("causes", Phrase.Of("It takes two weeks of readings before the period, with temperature and humidity outside."))}"), body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("The week is replayed with something done otherwise, by a vapour balance fitted to the weeks before; the difference goes onto the measured air. Shares are means over all orders in which the changes could be made, so that they add up "
        + "to the week's risk hours; the weather has what no change would have avoided. One change may make another needless, so that hours avoided do not add up.");

    private static string Sentence(Estimate risk, ImmutableArray<Cause> causes)
    {
        if (risk.Value < 1)
        {
            return Phrase.Of("There were no risk hours to share out.");
        }

        Cause[] most = [.. causes.Where(c => c.RiskHours.Value >= 0.5).OrderByDescending(c => c.RiskHours.Value)];
        return most.Length == 0
            ? Phrase.Of($"No cause stands out behind the {Words.Count((int)risk.Value, "risk hour", "risk hours")}.")
            : Phrase.Of($"Of {Words.Count((int)risk.Value, "risk hour", "risk hours")}, {Words.List([.. most.Select((c, i) => $"{(i == 0 ? Phrase.Of("about ") : "")}{DisplayUnits.Number(c.RiskHours.Value, 0)} ({Words.Range(c.RiskHours)}) {ChangeWords.From(c.Name)}")])}.");
    }

    private static void Shares(HtmlBuilder body, ImmutableArray<Cause> causes)
    {
        double full = Math.Max(1, causes.Max(c => c.RiskHours.High));
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Risk hours by cause\" tabindex=\"0\"><table class=\"data\"><caption>Risk hours by cause</caption><thead><tr><th scope=\"col\">Cause</th><th scope=\"col\">Hours (range)</th><th scope=\"col\" class=\"screen\"><span class=\"vh\">Picture</span></th></tr></thead><tbody>");
        foreach (Cause cause in causes)
        {
            body.Line($"<tr><th scope=\"row\">{Words.Capital(ChangeWords.Cause(cause.Name))}</th><td>{DisplayUnits.Number(cause.RiskHours.Value, 1)} ({Words.Range(cause.RiskHours)})</td><td class=\"screen\">{RangeBar.Of(cause.RiskHours, full)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static void Otherwise(HtmlBuilder body, ImmutableArray<WhatIf> whatIfs)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"The week otherwise\" tabindex=\"0\"><table class=\"data\"><caption>The same week, done otherwise</caption><thead><tr><th scope=\"col\">Had we</th><th scope=\"col\">Risk hours left</th><th scope=\"col\">Avoided (range)</th></tr></thead><tbody>");
        foreach (WhatIf other in whatIfs)
        {
            body.Line($"<tr><th scope=\"row\" class=\"words\">{ChangeWords.Of(other.Name)}</th><td>{DisplayUnits.Number(other.RiskHours.Value, 0)}</td><td>{Words.WithRange(other.RiskHoursAvoided)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }
}
