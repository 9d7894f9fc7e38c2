using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The week in one sentence and three numbers.</summary>
public sealed class WeekInBriefCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "brief";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How was it?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["riskHours", "rangeOfRiskHours"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity"], RestsOnLeaves = true };

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HtmlBuilder body = new();
        body.Line($"<dl class=\"numbers\">");
        RiskHours(body, context);
        Third(body, context);
        Hours(body, context.Review);
        body.Line($"</dl>");
        body.Line($"<p class=\"note\">Risk hour: leaves wet or close to the dew point, at a temperature at which grey mould can start.</p>");
        return new CellContent(Sentence(context), body.ToHtml());
    }

    private static string Sentence(CellContext context)
    {
        Review review = context.Review;
        if (review.Coverage.HoursWithData == 0)
        {
            return Phrase.Of("There are no usable readings of this period, so nothing can be said of it.");
        }

        if (review.RiskHours is not { } risk)
        {
            return Phrase.Of($"How many risk hours there were is not known. " + $"{context.WhyNotKnown("riskHours", Phrase.Of("Temperature or humidity is lacking."))}");
        }

        string late = context.Facts switch
        {
            { LeafWettings: > 0 and { } all, LateLeafWettings: > 0 and { } n } => Phrase.Of($", and {n} of {Words.Count(all, "watering", "waterings")} over the leaves ended too late for them to dry by sunset"),
            { LeafWettings: 1, UnjudgedWaterings: 0 } => Phrase.Of(", and the one watering over the leaves ended in time"),
            { LeafWettings: > 1 and { } all, UnjudgedWaterings: 0 } => Phrase.Of($", and all {all} waterings over the leaves ended in time"),
            { LongestRun: { Hours: >= 3 } run } => Phrase.Of($", {Words.Count(run.Hours, "hour", "hours")} of them in a row from {LocalTimes.Moment(run.Start)}"),
            _ => "",
        };
        string wet = context.Facts.WetHours == 0 ? "" : Phrase.Of($", leaves were wet in {context.Facts.WetHours}");
        return Phrase.Of($"About {DisplayUnits.Number(risk.Value, 0)} of {Words.Count(review.Coverage.HoursWithData, "hour", "hours")} with data were risk hours{(context.Facts.LeafWettings > 0 ? wet + late : late + wet)}.{Unjudged(context.Facts)}");
    }

    private static string Unjudged(WeekFacts facts) => facts.UnjudgedWaterings == 0
        ? ""
        : Phrase.Of($" {Words.Capital(Words.Count(facts.UnjudgedWaterings, "watering", "waterings"))} could not be judged.");

    private static void RiskHours(HtmlBuilder body, CellContext context)
    {
        Estimate? risk = context.Review.RiskHours;
        string range = risk is null ? Phrase.Of("not known") : Phrase.Of($"range {Words.Range(risk)}");
        Number(body, Phrase.Of("Risk hours"), risk is null ? "–" : DisplayUnits.Number(risk.Value, 0), range, Before(context.Review.RiskHoursBefore is { } before ? Words.WithRange(before) : null));
    }

    private static void Third(HtmlBuilder body, CellContext context)
    {
        WeekFacts facts = context.Facts;
        if (facts.LeafWettings is > 0 and { } all)
        {
            Number(body, Phrase.Of("Late wettings of leaves"), $"{facts.LateLeafWettings}", Phrase.Of($"of {Words.Count(all, "watering", "waterings")} over leaves"), Before(context.Review.WeekBefore is { LeafWettings: { } n, LateLeafWettings: { } late } ? Phrase.Of($"{late} of {n}") : null));
        }
        else if (facts.LongestRun is { } run)
        {
            Number(body, Phrase.Of("Longest run of risk hours"), $"{run.Hours} h", Phrase.Of($"from {LocalTimes.Moment(run.Start)}"), Phrase.Of($"to {LocalTimes.Moment(run.End)}"));
        }
        else
        {
            bool known = context.Review.RiskHours is not null;
            Number(body, Phrase.Of("Longest run of risk hours"), known ? "0 h" : "–", known ? Phrase.Of("no hour counts") : Phrase.Of("not known"), "");
        }
    }

    private static void Hours(HtmlBuilder body, Review review)
    {
        Coverage coverage = review.Coverage;
        string gaps = coverage.HoursWithData == 0 ? "" : coverage.Gaps.Length == 0 ? Phrase.Of("no gap") : Words.Count(coverage.Gaps.Length, "gap", "gaps");
        Number(body, Phrase.Of("Hours with data"), $"{coverage.HoursWithData}", Phrase.Of($"of {coverage.ExpectedHours}{(gaps.Length > 0 ? ", " : "")}{gaps}"), Before(review.WeekBefore is { } before ? Words.Whole(before.HoursWithData) : null));
    }

    /// <summary>Last week's number beside this week's.</summary>
    internal static string Before(string? number) => number is null ? Phrase.Of("week before: not known") : Phrase.Of($"week before: {number}");

    private static void Number(HtmlBuilder body, string name, string value, string first, string second)
        => body.Line($"<div><dt>{name}</dt><dd><strong>{value}</strong><span>{first}</span><span>{second}</span></dd></div>");
}
