using System.Collections.Immutable;
using ClimateLens.Analysis.Learned;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>What a check that learned from the weeks before says of the sensors; it stands beside the flags and changes none.</summary>
public sealed class SecondOpinionCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "secondOpinion";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Do the sensors go together as usual?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["secondOpinion"], Files = [DataFiles.SecondOpinion], Channels = ["airTemperature", "relativeHumidity"] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["secondOpinion"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.SecondOpinion is not { } opinion)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("secondOpinion", Phrase.Of("It takes three weeks of readings before the period to learn from."))}"));
        }

        HtmlBuilder body = new();
        Table(body, opinion, context.Units);
        Shifts(body, opinion, context.Units);
        NotJudged(body, opinion);
        body.Line($"<p class=\"note\">A second opinion: no value, flag or risk hour rests on it. {LearnedRates.Sentence}</p>");
        return new CellContent(Sentence(opinion), body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("Each sensor is predicted from the others, the hour and the sun, as learned from the weeks before; what lies far outside the error on days held out is named, the furthest out first. It cannot tell a faulty sensor from a house that changed.");

    private static string Sentence(SecondOpinionReport opinion)
    {
        LearnedSensorReport[] shifted = [.. opinion.Sensors.Where(s => s.Shift is not null)];
        LearnedSensorReport[] suspect = [.. opinion.Sensors.Where(s => s.Shift is null && s.Suspect > 0)];
        string steps = suspect.Length == 0 ? "" : Phrase.Of($"{Words.Count(suspect.Sum(s => s.Suspect), "step", "steps")} of {Named(suspect)} {(suspect.Sum(s => s.Suspect) == 1 ? Phrase.Of("lies") : Phrase.Of("lie"))} far from what was expected");
        return shifted.Length > 0
            ? Phrase.Of($"{Words.Capital(Named(shifted))} {(shifted.Length == 1 ? Phrase.Of("reads") : Phrase.Of("read"))} otherwise than expected from the other sensors for a day or more: a drift, a sensor that was moved, or a house that changed{(steps.Length > 0 ? "; " + steps : "")}.")
            : steps.Length > 0
                ? Phrase.Of($"{Words.Capital(steps)} from the other sensors.")
                : Phrase.Of($"Yes: {(opinion.Sensors.Length == 1 ? Phrase.Of("the one sensor") : Phrase.Of($"all {opinion.Sensors.Length} sensors"))} that could be judged read as expected from the other sensors.");
    }

    private static void Table(HtmlBuilder body, SecondOpinionReport opinion, DisplayUnits units)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Sensors against what was expected, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Steps of the period against what was expected</caption>");
        body.Line($"<thead><tr><th scope=\"col\">Sensor</th><th scope=\"col\">Learned from</th><th scope=\"col\">95 of 100 within</th><th scope=\"col\">Suspect beyond</th><th scope=\"col\">Judged</th><th scope=\"col\">Suspect</th></tr></thead><tbody>");
        foreach (LearnedSensorReport s in opinion.Sensors)
        {
            body.Line($"<tr><th scope=\"row\">{Label(s)}</th><td>{Words.Count(s.DaysLearned, "day", "days")}</td><td>{Amount(s, s.HeldOutError, units)}</td><td>{Amount(s, s.StepLimit, units)}</td><td>{s.Judged}</td><td>{s.Suspect}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static void Shifts(HtmlBuilder body, SecondOpinionReport opinion, DisplayUnits units)
    {
        if (opinion.Sensors.All(s => s.Shift is null))
        {
            return;
        }

        body.Line($"<h3>Shifts</h3><ul>");
        foreach (LearnedSensorReport s in opinion.Sensors)
        {
            if (s.Shift is { } shift)
            {
                double[] range = [.. new[] { Math.Abs(shift.Size.Low), Math.Abs(shift.Size.High) }.Order()];
                string grows = shift.Days > 1 ? Phrase.Of($"; {Amount(s, Math.Abs(shift.FirstDay), units)} on the first day and {Amount(s, Math.Abs(shift.LastDay), units)} on the last") : "";
                body.Line($"<li>{Label(s)} reads {Amount(s, Math.Abs(shift.Size.Value), units)} {(shift.Size.Value > 0 ? Phrase.Of("more") : Phrase.Of("less"))} than expected ({Amount(s, range[0], units)} to {Amount(s, range[1], units)}), {Part(shift.Part)}on {Words.Count(shift.Days, "day", "days")} from {LocalTimes.Day(shift.From.Date)}{grows}.</li>");
            }
        }

        body.Line($"</ul>");
    }

    private static void NotJudged(HtmlBuilder body, SecondOpinionReport opinion)
    {
        foreach (NotLearned sensor in opinion.NotLearned)
        {
            body.Line($"<p>Not judged: {Label(sensor.Channel, sensor.Sensor)}. {sensor.Why}</p>");
        }
    }

    private static string Part(string part) => part switch
    {
        "sunUp" => Phrase.Of("only while the sun is up, "),
        "sunDown" => Phrase.Of("only while the sun is down, "),
        _ => "",
    };

    private static string Named(IEnumerable<LearnedSensorReport> sensors)
    {
        ImmutableArray<string> names = [.. sensors.Select(s => Label(s)).Select(label => label.Length > 1 && char.IsUpper(label[1]) ? label : char.ToLowerInvariant(label[0]) + label[1..])];
        return Words.List([.. names]);
    }

    private static string Label(LearnedSensorReport sensor) => Label(sensor.Channel, sensor.Sensor);

    private static string Label(string channel, string sensor) => ChannelCatalogue.Get(channel).Label + (sensor.Length == 0 ? "" : $" \"{sensor}\"");

    private static string Amount(LearnedSensorReport sensor, double difference, DisplayUnits units)
        => ChannelCatalogue.Get(sensor.Channel).Quantity == Quantity.RelativeHumidity ? Phrase.Of($"{DisplayUnits.Number(difference, 1)}\u00A0points") : units.Difference(difference);
}
