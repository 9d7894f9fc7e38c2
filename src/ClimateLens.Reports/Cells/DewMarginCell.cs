using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Charts;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How far leaves stayed above the dew point.</summary>
public sealed class DewMarginCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "margin";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How close did leaves come to dew?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["leafTemperature", "airAmongTheLeaves", "moistAir"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity", "leafTemperature", "canopyTemperature", "canopyHumidity"], RestsOnLeaves = true };

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Figure;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        DisplayUnits units = context.Units;
        if (Extremes.Of(review.Hours, h => h.DewPointMarginK) is not { } margin)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("riskHours", Phrase.Of("It takes both air temperature and humidity."))}"));
        }

        int below = review.Hours.Count(h => h.DewPointMarginK <= 0);
        string dew = below == 0 ? Phrase.Of("no hourly mean reached it") : Phrase.Of($"in {Words.Count(below, "hour", "hours")} they were at or below it");
        string lowest = Phrase.Of($"{units.Difference(Math.Abs(margin.Low))} {(margin.Low < 0 ? Phrase.Of("below") : Phrase.Of("above"))} the dew point");
        string sentence = Phrase.Of($"By measured, modelled or assumed leaf temperature, leaves were at their lowest {lowest} ({LocalTimes.Moment(margin.LowAt)}); {dew}.");
        HtmlBuilder body = new();
        body.Line($"<figure>");
        body.Line(ChartMarkup.Of("chart-margin", Phrase.Of($"Chart of leaf temperature less dew point. {sentence}"), WeekCharts.Of(review, [Panel(context)])));
        body.Line($"<figcaption>Leaf temperature less the dew point of the air among the leaves. At the solid black line dew forms.{Under(context)}{(context.Units.System == Nursery.Settings.UnitSystem.Us ? "" : Phrase.Of(" K: degrees of difference."))}</figcaption></figure>");
        return new CellContent(sentence, body.ToHtml(), Phrase.Of("Whether leaf temperature was measured, modelled or assumed stands under “How was it worked out?”."));
    }

    private static ChartPanel Panel(CellContext context)
    {
        DisplayUnits units = context.Units;
        HourLine line = WeekCharts.Line(context.Review, Phrase.Of($"Margin {units.DifferenceSymbol}"), Palette.Margin, "solid", 2, h => units.DifferenceNumber(h.DewPointMarginK));
        ChartLevel dew = new(0, "solid");
        (double, double) usual = (units.DifferenceNumber(-1)!.Value, units.DifferenceNumber(9)!.Value); // the same in every house and week; a choice of this project
        return Limit(context) is { } limit && units.DifferenceNumber(limit) is { } shown
            ? new ChartPanel("", [line], dew, new ChartLevel(shown, "dash")) { Usual = usual }
            : new ChartPanel("", [line], dew) { Usual = usual };
    }

    private static string Under(CellContext context) => Limit(context) is { } limit
        ? Phrase.Of($" Under the dashed line, at {context.Units.Difference(limit)}, an hour can be a risk hour.")
        : "";

    /// <summary>The margin in force, when the review names one. [K]</summary>
    private static double? Limit(CellContext context)
        => context.Review.Provenance.Thresholds.FirstOrDefault(t => t is { Name: "marginK", Unit: "K" })?.Value;
}
