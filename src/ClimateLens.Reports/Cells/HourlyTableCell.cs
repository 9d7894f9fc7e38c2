using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Every hour as a table, folded away; not printed, since it takes pages and stands in hours.csv.</summary>
public sealed class HourlyTableCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "hours";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What are the numbers hour by hour?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["moistAir", "alignment"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity"] };

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ImmutableArray<ReviewHour> hours = context.Review.Hours;
        if (hours.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("The period has no hours."));
        }

        HtmlBuilder body = new();
        body.Line($"<details class=\"screen\"><summary>Show all {hours.Length} hours</summary>");
        body.Line($"<div class=\"scroll tall\" role=\"region\" aria-label=\"Hourly values\" tabindex=\"0\"><table class=\"data\"><caption>Hourly means, local time; an empty field is not known</caption>");
        Head(body, context.Units);
        foreach (ReviewHour hour in hours)
        {
            Row(body, hour, context.Units);
        }

        body.Line($"</tbody></table></div></details>");
        body.Line($"<p class=\"paper\">The hourly table is not printed; it stands in {DataFiles.Hours} beside this page.</p>");
        return new CellContent("", body.ToHtml());
    }

    private static void Head(HtmlBuilder body, DisplayUnits units)
    {
        string[] names =
        [
            Phrase.Of("Hour"), Phrase.Of($"Air {units.TemperatureSymbol}"), Phrase.Of("RH %"), Phrase.Of("VPD kPa"), Phrase.Of($"Dew point {units.TemperatureSymbol}"), Phrase.Of($"Leaf {units.TemperatureSymbol}"), Phrase.Of($"Dew point among leaves {units.TemperatureSymbol}"),
            Phrase.Of($"Margin {units.DifferenceSymbol}"), Phrase.Of("Water in air g/m³"), Phrase.Of("Leaves wet"), Phrase.Of("Risk %"),
        ];
        body.Add($"<thead><tr>");
        foreach (string name in names)
        {
            body.Add($"<th scope=\"col\">{name}</th>");
        }

        body.Line($"</tr></thead><tbody>");
    }

    private static void Row(HtmlBuilder body, ReviewHour hour, DisplayUnits units)
    {
        body.Add($"<tr><th scope=\"row\">{LocalTimes.Moment(hour.Start)}</th>");
        Number(body, units.TemperatureNumber(hour.AirTemperatureC), 1);
        Number(body, hour.RelativeHumidityPct, 0);
        Number(body, hour.VpdKPa, 2);
        Number(body, units.TemperatureNumber(hour.DewPointC), 1);
        Number(body, units.TemperatureNumber(hour.LeafTemperatureC), 1);
        Number(body, units.TemperatureNumber(hour.LeafAirDewPointC), 1);
        Number(body, units.DifferenceNumber(hour.DewPointMarginK), 1);
        Number(body, hour.AbsoluteHumidityGm3, 1);
        body.Add($"<td>{hour.Wet switch { true => Phrase.Of("yes"), false => Phrase.Of("no"), null => "" }}</td>");
        Number(body, hour.RiskProbability * 100, 0);
        body.Line($"</tr>");
    }

    private static void Number(HtmlBuilder body, double? value, int decimals)
    {
        string text = DisplayUnits.Number(value, decimals);
        body.Add($"<td>{(text == DisplayUnits.NotKnown ? "" : text)}</td>");
    }
}
