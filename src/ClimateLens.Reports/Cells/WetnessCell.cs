using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>When leaves were wet, and for how long.</summary>
public sealed class WetnessCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "wetness";

    /// <inheritdoc/>
    public string Heading => "How long were leaves wet?";

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.WetPeriods is not { } periods)
        {
            return CellContent.Unanswered("Not known. " + context.WhyNotKnown("wetPeriods", "It takes air temperature and humidity."));
        }

        HtmlBuilder body = new();
        if (!periods.IsEmpty)
        {
            Table(body, periods, context.Units);
            body.Line(context.DataLink(DataFiles.WetPeriods));
        }

        string dew = context.Review.Waterings is null ? " Nothing tells of waterings: these are hours of dew alone." : "";
        return new CellContent(Sentence(context, periods), body.ToHtml(), $"Modelled, not measured, unless “How was it worked out?” names a wetness sensor. A dry break of up to four hours does not end a period; it is not in its hours.{dew}");
    }

    private static string Sentence(CellContext context, ImmutableArray<WetPeriod> periods)
    {
        int wet = context.Facts.WetHours, unknown = context.Review.Hours.Count(h => h.Wet is null);
        string notKnown = unknown == 0 ? "" : $" In {Words.Count(unknown, "hour", "hours")} it is not known.";
        if (periods.IsEmpty)
        {
            return $"By the film model leaves stayed dry.{notKnown}";
        }

        WetPeriod longest = periods.MaxBy(p => p.Hours)!;
        string run = $"the longest of {Words.Count(periods.Length, "wet period", "wet periods")} had {Length(longest.Hours)}, from {LocalTimes.Moment(longest.Start)}";
        return $"By the film model leaves were wet for most of {Words.Count(wet, "hour", "hours")}; {run}.{notKnown}";
    }

    private static void Table(HtmlBuilder body, ImmutableArray<WetPeriod> periods, DisplayUnits units)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Wet periods\" tabindex=\"0\"><table class=\"data\"><caption>Wet periods, local time</caption><thead><tr><th scope=\"col\">From</th><th scope=\"col\">To</th><th scope=\"col\">Wet h</th><th scope=\"col\">Leaf {units.TemperatureSymbol}</th></tr></thead><tbody>");
        foreach (WetPeriod period in periods)
        {
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(period.Start)}</th><td>{LocalTimes.Moment(period.End)}</td><td>{DisplayUnits.Number(period.Hours, 1)}</td><td>{DisplayUnits.Number(units.TemperatureNumber(period.MeanTemperatureC), 1)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static string Length(double hours) => $"{DisplayUnits.Number(hours, 1)} wet hours";
}
