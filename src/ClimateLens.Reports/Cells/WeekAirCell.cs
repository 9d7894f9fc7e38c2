using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Charts;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Temperature, dew point, humidity and VPD of the period, with waterings marked.</summary>
public sealed class WeekAirCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "air";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What was the air like?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["moistAir", "alignment"], Files = [DataFiles.Hours], Channels = ["airTemperature", "relativeHumidity"] };

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Figure | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Review review = context.Review;
        string sentence = Sentence(context);
        if (sentence.Length == 0)
        {
            return CellContent.Unanswered(Phrase.Of("There are no readings of the air in this period."));
        }

        string label = Phrase.Of($"Chart of the hourly air. {sentence} The numbers stand in the hourly table below.");
        HtmlBuilder body = new();
        body.Line($"<figure>");
        body.Line(ChartMarkup.Of("chart-air", label, WeekCharts.Of(review, Panels(context))));
        body.Line($"<figcaption>{Caption(review)}</figcaption></figure>");
        return new CellContent(sentence, body.ToHtml());
    }

    // What the axes span in every house and week: choices of this project.
    private static readonly (double Low, double High) UsualTemperature = (5, 30);

    /// <summary>Half-width of a sensor's error as the review states it; null where it does not.</summary>
    private static double? Accuracy(Review review, string channel)
        => review.Provenance.Thresholds.FirstOrDefault(t => t.Name == channel + "Accuracy")?.Value;

    private static List<ChartPanel> Panels(CellContext context)
    {
        Review r = context.Review;
        DisplayUnits u = context.Units;
        string t = u.TemperatureSymbol;
        return
        [
            new ChartPanel("",
            [
                WeekCharts.Line(r, Phrase.Of($"Air {t}"), Palette.Temperature, "solid", 1, h => u.TemperatureNumber(h.AirTemperatureC)) with { Band = u.DifferenceNumber(Accuracy(r, "airTemperature")) },
                WeekCharts.Line(r, Phrase.Of($"Dew point {t}"), Palette.DewPoint, "dash", 1, h => u.TemperatureNumber(h.DewPointC)),
            ]) { Usual = (u.TemperatureNumber(UsualTemperature.Low)!.Value, u.TemperatureNumber(UsualTemperature.High)!.Value) },
            new ChartPanel("", [WeekCharts.Line(r, Phrase.Of("Relative humidity %"), Palette.Humidity, "solid", 1, h => h.RelativeHumidityPct) with { Band = Accuracy(r, "relativeHumidity") }]) { Usual = (50, 100) },
            new ChartPanel("", [WeekCharts.Line(r, Phrase.Of("VPD kPa"), Palette.Vpd, "solid", 3, h => h.VpdKPa)]) { Usual = (0, 1) },
        ];
    }

    private static string Sentence(CellContext context)
    {
        DisplayUnits u = context.Units;
        List<string> parts = [];
        if (Extremes.Of(context.Review.Hours, h => h.AirTemperatureC) is { } air)
        {
            parts.Add(Phrase.Of($"The hourly air temperature ran from {u.Temperature(air.Low)} ({LocalTimes.Moment(air.LowAt)}) to {u.Temperature(air.High)} ({LocalTimes.Moment(air.HighAt)})."));
        }

        if (Extremes.Of(context.Review.Hours, h => h.RelativeHumidityPct) is { } humidity)
        {
            parts.Add(Phrase.Of($"Relative humidity averaged {DisplayUnits.Humidity(humidity.Mean)} and was highest, {DisplayUnits.Humidity(humidity.High)}, at {LocalTimes.Moment(humidity.HighAt)}."));
        }

        if (Extremes.Of(context.Review.Hours, h => h.VpdKPa) is { } vpd)
        {
            parts.Add(Phrase.Of($"VPD lay between {DisplayUnits.Vpd(vpd.Low)} and {DisplayUnits.Vpd(vpd.High)}."));
        }

        return string.Join(' ', parts);
    }

    private static string Caption(Review review)
    {
        string waterings = review.Waterings switch
        {
            null => Phrase.Of("Nothing tells of waterings in this period."),
            { Length: 0 } => Phrase.Of("No watering is noted in this period."),
            _ => Phrase.Of("Upright lines: waterings; dashed with a filled diamond where leaves were wetted after the cut-off."),
        };
        return Phrase.Of($"Hourly means. VPD (vapour-pressure deficit): how hard the air draws water from leaves; near 0 nothing dries. Bands: what the sensors may be off. Grey: night. A broken line: no usable readings. {waterings}");
    }
}
