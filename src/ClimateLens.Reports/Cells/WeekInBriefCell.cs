using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The week in one sentence and three numbers.</summary>
public sealed class WeekInBriefCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "brief";

    /// <inheritdoc/>
    public string Heading => "How was it?";

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HtmlBuilder body = new();
        body.Line($"<dl class=\"numbers\">");
        RiskHours(body, context);
        Third(body, context);
        Hours(body, context.Review.Coverage);
        body.Line($"</dl>");
        return new CellContent(Sentence(context), body.ToHtml());
    }

    private static string Sentence(CellContext context)
    {
        Review review = context.Review;
        if (review.Coverage.HoursWithData == 0)
        {
            return "There are no usable readings of this period, so nothing can be said of it.";
        }

        if (review.RiskHours is not { } risk)
        {
            return "How many risk hours there were is not known. " + context.WhyNotKnown("riskHours", "Temperature or humidity is lacking.");
        }

        string late = context.Facts switch
        {
            { LeafWettings: > 0 and { } all, LateLeafWettings: > 0 and { } n } => $" {n} of {Words.Count(all, "watering", "waterings")} over the leaves ended after the cut-off, too late to count on dry leaves by sunset.",
            { LeafWettings: 1, UnjudgedWaterings: 0 } => " The one watering over the leaves ended before the cut-off.",
            { LeafWettings: > 1 and { } all, UnjudgedWaterings: 0 } => $" All {all} waterings over the leaves ended before the cut-off.",
            { LongestRun: { } run } => $" The longest run lasted {Words.Count(run.Hours, "hour", "hours")}, from {LocalTimes.Moment(run.Start)}.",
            _ => "",
        };
        return $"About {DisplayUnits.Number(risk.Value, 0)} of {Words.Count(review.Coverage.HoursWithData, "hour", "hours")} with data were risk hours.{Wet(context.Facts)}{late}{Unjudged(context.Facts)}";
    }

    private static string Wet(WeekFacts facts) => facts.WetHours == 0
        ? ""
        : $" In {Words.Count(facts.WetHours, "hour", "hours")} leaves were wet.";

    private static string Unjudged(WeekFacts facts) => facts.UnjudgedWaterings == 0
        ? ""
        : $" {Words.Capital(Words.Count(facts.UnjudgedWaterings, "watering", "waterings"))} could not be judged.";

    private static void RiskHours(HtmlBuilder body, CellContext context)
    {
        Estimate? risk = context.Review.RiskHours;
        string before = context.Review.RiskHoursBefore is { } b ? $"week before: {Words.WithRange(b)}" : "week before: not known";
        string range = risk is null ? "not known" : $"range {Words.Range(risk)}";
        Number(body, "Risk hours", risk is null ? "–" : DisplayUnits.Number(risk.Value, 0), range, before);
    }

    private static void Third(HtmlBuilder body, CellContext context)
    {
        WeekFacts facts = context.Facts;
        if (facts.LeafWettings is > 0 and { } all)
        {
            Number(body, "Late wettings of leaves", $"{facts.LateLeafWettings}", $"of {Words.Count(all, "watering", "waterings")} that wet leaves", "late: after the cut-off");
        }
        else if (facts.LongestRun is { } run)
        {
            Number(body, "Longest run of risk hours", $"{run.Hours} h", $"from {LocalTimes.Moment(run.Start)}", $"to {LocalTimes.Moment(run.End)}");
        }
        else
        {
            bool known = context.Review.RiskHours is not null;
            Number(body, "Longest run of risk hours", known ? "0 h" : "–", known ? "no hour counts" : "not known", "");
        }
    }

    private static void Hours(HtmlBuilder body, Coverage coverage)
    {
        string gaps = coverage.HoursWithData == 0 ? "" : coverage.Gaps.Length == 0 ? "no gap" : Words.Count(coverage.Gaps.Length, "gap", "gaps");
        Number(body, "Hours with data", $"{coverage.HoursWithData}", $"of {coverage.ExpectedHours}", gaps);
    }

    private static void Number(HtmlBuilder body, string name, string value, string first, string second)
        => body.Line($"<div><dt>{name}</dt><dd><strong>{value}</strong><span>{first}</span><span>{second}</span></dd></div>");
}
