using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How much of the ground the crop covers, and when it closes.</summary>
public sealed class CanopyCell : IReportCell
{
    private const double WideRange = 0.4; // of cover; choice of this project

    /// <inheritdoc/>
    public string Name => "canopy";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("How far has the crop closed?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["canopy"], Files = [DataFiles.Canopy], Records = [RecordKind.PlantWidths] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["canopy"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Figure | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Canopy is not { } canopy)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("canopy", Phrase.Of("It takes the crop's spacing and the day of potting or pinch."))}"));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Ground cover\" tabindex=\"0\"><table class=\"data\"><caption>Share of the ground that leaves cover, seen from above</caption><thead><tr><th scope=\"col\">Day</th><th scope=\"col\">Cover</th><th scope=\"col\">5 to 95&#160;%</th></tr></thead><tbody>");
        foreach (CanopyDay day in canopy.Days)
        {
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Day(day.Date)}</th><td>{Words.Share(day.Cover.Value)}</td><td>{Range(day.Cover)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        body.Line($"<p class=\"note\">{Widths(canopy, context.Units)}</p>");
        return new CellContent(Sentence(canopy), body.ToHtml(), Phrase.Of("Modelled from plant widths and spacing, not measured: a closing canopy dries more slowly and its air is damper than the sensor's. Closed means a cover of 95\u00A0%."));
    }

    private static string Sentence(CanopyState canopy)
    {
        string cover = Phrase.Of($"On {LocalTimes.Day(canopy.Days[^1].Date)} leaves covered about {Words.Share(canopy.Cover.Value)} of the ground ({Range(canopy.Cover)})");
        if (canopy.ClosureDate is not { } closure)
        {
            return Phrase.Of($"{cover}; at this spacing the crop is not expected to close before it is sold or within four months.");
        }

        bool past = closure.Value <= canopy.Days[^1].Date;
        string latest = closure.High is { } high ? LocalTimes.Day(high) : Phrase.Of("not at all");
        string range = closure.High == closure.Low ? "" : Phrase.Of($" (from {LocalTimes.Day(closure.Low)} to {latest})");
        return past ? Phrase.Of($"{cover}; at this spacing it has been closed since about {LocalTimes.Day(closure.Value)}{range}.") : Phrase.Of($"{cover}; at this spacing it will close about {LocalTimes.Day(closure.Value)}{range}.");
    }

    private static string Widths(CanopyState canopy, DisplayUnits units)
    {
        string widths = canopy.Widths.IsEmpty
            ? Phrase.Of("No plant width was measured: growth is a first guess by crop. Measuring ten plants on three days, a week apart, narrows it.")
            : Phrase.Of($"Growth fitted to widths of {Words.Count(canopy.Widths.Length, "day", "days")}, the last on {LocalTimes.Day(canopy.Widths[^1].Date)}: {units.PlantWidth(canopy.Widths[^1].WidthCm)}.");
        string wide = canopy.Cover.High - canopy.Cover.Low > WideRange && !canopy.Widths.IsEmpty ? Phrase.Of(" The range is still wide: measure again this week.") : "";
        return Phrase.Of($"{widths}{wide} Days are counted from {LocalTimes.Day(canopy.CountedFrom)}. {canopy.Assumption}").TrimEnd();
    }

    private static string Range(Estimate cover) => Phrase.Of($"{DisplayUnits.Number(100 * cover.Low, 0)} to {Words.Share(cover.High)}");
}
