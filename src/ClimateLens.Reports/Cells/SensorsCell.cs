using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>How far the sensors can be trusted, and where readings are lacking.</summary>
public sealed class SensorsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "sensors";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Can the readings be trusted?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["alignment", "clock", "quality"], Files = [DataFiles.Sensors, DataFiles.Flags, DataFiles.Gaps, DataFiles.Files], Channels = ["airTemperature", "relativeHumidity"] };

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HtmlBuilder body = new();
        Gaps(body, context);
        Sensors(body, context);
        ClockMarkup.Write(body, context.Review);
        FilesMarkup.Write(body, context);
        return new CellContent(Sentence(context.Review), body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("Each step of each series is tested (range, zeros, spikes, steps, standing still, changes of unit, against what stands beside it). Suspect values are used and counted; failed and missing ones are not used.");

    private static string Sentence(Review review)
    {
        if (review.Sensors.IsEmpty)
        {
            return Phrase.Of("There is no series of readings in this period.");
        }

        int doubtful = review.Sensors.Count(s => s.Flags.Suspect + s.Flags.Fail > 0);
        double hours = review.Coverage.Gaps.Sum(g => g.Hours);
        string gaps = review.Coverage.Gaps.IsEmpty
            ? Phrase.Of("there is no gap in temperature and humidity")
            : review.Coverage.Gaps.Length == 1
                ? Phrase.Of($"One gap in temperature or humidity takes {DisplayUnits.Number(hours, 1)} hours")
                : Phrase.Of($"{review.Coverage.Gaps.Length} gaps in temperature or humidity take {DisplayUnits.Number(hours, 1)} hours");
        string trust = doubtful == 0
            ? Phrase.Of($"Nothing speaks against any of the {review.Sensors.Length} series")
            : Phrase.Of($"{doubtful} of {review.Sensors.Length} series have values in doubt");
        string clocks = review.Clocks.Any(c => c.ConcernsPeriod) ? Phrase.Of(" A clock does not agree with the sun.") : "";
        return $"{trust}; {gaps}.{clocks}";
    }

    private static void Gaps(HtmlBuilder body, CellContext context)
    {
        if (context.Review.Coverage.Gaps.IsEmpty)
        {
            return;
        }

        body.Line($"<h3>Gaps</h3><ul>");
        foreach (Gap gap in context.Review.Coverage.Gaps)
        {
            body.Line($"<li>{LocalTimes.Span(gap.Start, gap.End)}: {DisplayUnits.Number(gap.Hours, 1)} h, {Why(gap.Why)}</li>");
        }

        body.Line($"</ul>");
    }

    private static void Sensors(HtmlBuilder body, CellContext context)
    {
        if (context.Review.Sensors.IsEmpty)
        {
            return;
        }

        body.Line($"<h3>Series</h3><div class=\"scroll\" role=\"region\" aria-label=\"Series and their flags, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Steps of the period by flag</caption>");
        body.Line($"<thead><tr><th scope=\"col\">Series</th><th scope=\"col\">From</th><th scope=\"col\">Passed</th><th scope=\"col\">Not tested</th><th scope=\"col\">Suspect</th><th scope=\"col\">Failed</th><th scope=\"col\">Missing</th><th scope=\"col\">To be said</th></tr></thead><tbody>");
        foreach (SensorReport s in context.Review.Sensors)
        {
            FlagCounts f = s.Flags;
            string notes = s.Notes.IsEmpty ? "–" : string.Join(' ', s.Notes);
            Html sensor = s.Sensor.Length == 0 ? Html.Empty : HtmlBuilder.Of($", {Html.Name(s.Sensor)}");
            body.Line($"<tr><th scope=\"row\">{Label(s.Channel)}{sensor}</th><td>{Html.Name(s.Source)}</td><td>{f.Pass}</td><td>{f.NotEvaluated}</td><td>{f.Suspect}</td><td>{f.Fail}</td><td>{f.Missing}</td><td class=\"words\">{notes}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static string Label(string channel) => ChannelCatalogue.TryGet(channel, out Channel? known) ? known.Label : channel;

    private static string Why(string why) => why switch
    {
        "noReadings" => Phrase.Of("no readings"),
        "missingValue" => Phrase.Of("the value was missing"),
        "failedCheck" => Phrase.Of("the values failed a check"),
        _ => Words.Spaced(why),
    };
}
