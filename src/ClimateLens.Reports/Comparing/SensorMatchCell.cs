using ClimateLens.Analysis.Comparison;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Comparing;

/// <summary>Whether the sensors of both sides can be compared at all.</summary>
public sealed class SensorMatchCell : ICompareCell
{
    /// <inheritdoc/>
    public string Name => "sensorMatch";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Can the sensors be compared?");

    /// <inheritdoc/>
    public CellContent Render(CompareContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (!context.Report.SameTime)
        {
            return CellContent.Unanswered(context.Report.First.House == context.Report.Second.House
                ? Phrase.Of("Both sides come from the sensors of one house: what is wrong with them is wrong with both, unless one was moved or mended in between.")
                : Phrase.Of("Both sides are of different times: no night can be held against the other."));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Sensors on nights alike\" tabindex=\"0\"><table class=\"data\"><caption>First less second on nights alike</caption><thead><tr><th scope=\"col\">Sensor</th><th scope=\"col\">Nights</th><th scope=\"col\">Offset (range)</th><th scope=\"col\">Two such sensors may part by</th><th scope=\"col\">The period's difference, less that offset</th></tr></thead><tbody>");
        foreach (SensorMatch match in context.Report.Sensors)
        {
            string unit = match.Channel == "airTemperature" ? "K" : "%";
            string offset = match.Offset is { } o ? Phrase.Of($"{CompareWords.Signed(o.Value, 1)} {unit} ({CompareWords.Signed(o.Low, 1)} to {CompareWords.Signed(o.High, 1)})") : DisplayUnits.NotKnown;
            string corrected = match.Corrected is { } c ? $"{CompareWords.Signed(c, 1)} {unit}" : DisplayUnits.NotKnown;
            body.Line($"<tr><th scope=\"row\">{PlainNames.Of(match.Channel)}</th><td>{match.Nights}</td><td>{offset}</td><td>±{DisplayUnits.Number(match.JointAccuracy, 1)} {unit}</td><td>{corrected}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        body.Line($"<p>{Canopy(context)}</p>");
        return new CellContent(Sentence(context.Report), body.ToHtml(),
            Phrase.Of("Nights alike: hours of night in which the air of both is within 1 K and no leaves were watered for 12 hours, three hours or more of a night. The offset holds what the sensors and what the houses differ by on such nights; hang both sensors side by side for a night to part the two."));
    }

    private static string Sentence(ComparisonReport report)
    {
        SensorMatch[] parted = [.. report.Sensors.Where(s => s.Offset is { } o && Math.Abs(o.Value) > s.JointAccuracy)];
        return report.Sensors.IsEmpty || report.Sensors.All(s => s.Offset is null) ? Phrase.Of("Not known: there are fewer than three nights on which both were alike.")
            : parted.Length == 0 ? Phrase.Of("On nights alike they part by no more than two such sensors may.")
            : Phrase.Of($"On nights alike {Words.List([.. parted.Select(s => CompareWords.Lower(PlainNames.Of(s.Channel)))])} {(parted.Length == 1 ? Phrase.Of("parts") : Phrase.Of("part"))} by more than two such sensors may: the houses differ even then, or a sensor is off.");
    }

    /// <summary>Whose air among the leaves is measured: what is assumed of it is in the risk hours and margins, and in no sensor's error.</summary>
    private static string Canopy(CompareContext context)
    {
        bool first = HasCanopy(context.First), second = HasCanopy(context.Second);
        return (first, second) switch
        {
            (true, true) => Phrase.Of("Both measure the air among the leaves."),
            (false, false) => Phrase.Of("Neither measures the air among the leaves: both rest on the same assumptions of it, which are in no sensor's error."),
            _ => Phrase.Of($"Only {(first ? context.FirstName : context.SecondName)} measures the air among the leaves; for the other it is assumed, which is in no sensor's error. Differences of margin and of risk hours may come from that."),
        };
    }

    private static bool HasCanopy(Analysis.Reviews.Review review) => review.Sensors.Any(s => s.Channel is "canopyTemperature" or "canopyHumidity");
}
