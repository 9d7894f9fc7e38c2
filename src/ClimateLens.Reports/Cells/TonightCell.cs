using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The first night after the period, and how late its day may be watered.</summary>
public sealed class TonightCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "tonight";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What of the night after this week?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["rangeOfRiskHours"], RestsOnLeaves = true };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["outlook"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Outlook is not { } outlook)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("outlook", Phrase.Of("No day before it is known well enough."))}"));
        }

        string risk = outlook is { RiskHours: { } hours, Score: { } score }
            ? Phrase.Of($"From {LocalTimes.Moment(outlook.Sunset)} to sunrise at {LocalTimes.Clock(outlook.Sunrise)}: about {DisplayUnits.Number(hours.Value, 0)} risk hours ({Words.Range(hours)}). On {score.Nights} past nights, each foretold from those before it, this was off by {DisplayUnits.Number(score.MeanMissHours, 1)} hours on the mean{Skill(score)}.")
            : context.WhyNotKnown("outlook.riskHours", Phrase.Of("The risk hours of that night are not foretold."));
        HtmlBuilder body = new();
        if (context.Review.Waterings is not { Length: > 0 } waterings || waterings.Any(w => w.WetsLeaves != false))
        {
            body.Line($"<p>{Finish(outlook)}</p>"); // a house that never waters over the leaves has no use for it
        }

        return new CellContent(risk, body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("There is no weather forecast in it: a plane through what the house and the weather were on the days before, with a penalty on its slopes that has proved itself on the nights before, learned from the nights of this house and shown only where it beats both the night before and the "
        + "mean night by more than the standard error of the difference. The finish is the cut-off of the days before by the film model, set by the hours before sunset.");

    private static string Skill(OutlookScore score) => score is { SkillOverNightBefore: { } before, SkillOverMeanNight: { } mean }
        ? Phrase.Of($"; its skill is {DisplayUnits.Number(before, 2)} over the night before and {DisplayUnits.Number(mean, 2)} over the mean night (1 is perfect, 0 no better)")
        : "";

    private static string Finish(OutlookReport outlook)
    {
        if (outlook.DryingDays == 0)
        {
            return Phrase.Of("How late that day may be watered over the leaves is not known.");
        }

        string day = LocalTimes.Day(outlook.Sunset.Date), miss = outlook.FinishMissHours is { } hours ? Phrase.Of($" On the days of this week such a guess was off by {DisplayUnits.Number(hours, 1)} hours on the mean.") : "";
        return (outlook.LatestFinish, outlook.LatestFinishOnWorstDay) switch
        {
            (null, _) => Phrase.Of($"Keep water off the leaves on {day}: on most of the {outlook.DryingDays} days before, no finish let leaves dry before sunset.{miss}"),
            ({ } latest, null) => Phrase.Of($"Latest finish of watering over the leaves on {day}: {LocalTimes.Clock(latest)} if it dries as the middle one of the {outlook.DryingDays} days before; if it is as dull as the worst of them, none.{miss}"),
            ({ } latest, { } worst) => Phrase.Of($"Latest finish of watering over the leaves on {day}: {LocalTimes.Clock(latest)} if it dries as the middle one of the {outlook.DryingDays} days before, {LocalTimes.Clock(worst)} if as the worst of them.{miss}"),
        };
    }
}
