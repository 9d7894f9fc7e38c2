using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>The waterings, whether they ended in time, and how the humidity stood before and after.</summary>
public sealed class WateringsCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "waterings";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("When was it watered, and could leaves dry before sunset?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["wateringCutOff", "riseOfHumidity"], Files = [DataFiles.Waterings], Channels = ["airTemperature", "relativeHumidity"], Records = [RecordKind.Waterings] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["waterings"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.Waterings is not { } waterings)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("waterings", Phrase.Of("No log and no valve tells of waterings."))}"));
        }

        if (waterings.IsEmpty)
        {
            return CellContent.Unanswered(Phrase.Of("No watering is noted in this period."));
        }

        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Waterings, scrolls sideways\" tabindex=\"0\"><table class=\"data wide\"><caption>Waterings, local time</caption>");
        body.Line($"<thead><tr><th scope=\"col\">When</th><th scope=\"col\">How</th><th scope=\"col\">Where</th><th scope=\"col\">Water</th><th scope=\"col\">Sunset</th><th scope=\"col\">Cut-off</th><th scope=\"col\">Ended in time</th><th scope=\"col\">Late: risk hours caused</th><th scope=\"col\">Water in air before, after</th><th scope=\"col\">Difference (range)</th><th scope=\"col\">RH before, after</th></tr></thead><tbody>");
        foreach (Watering watering in waterings)
        {
            Row(body, watering, context.Units);
        }

        body.Line($"</tbody></table></div>");
        Hints(body, context.Review.WateringHints);
        Floods(body, context.Review.Floods);
        return new CellContent(Sentence(waterings, context.Facts), body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("The cut-off is the latest finish after which a full film on the leaves would have dried an hour before sunset, by the film model with that day's own air and light; where that is not known, or the "
        + "nursery file sets the drying hours, it is sunset less these. The film model misses by about an hour, and leaves deep in the crop dry later. Before and after are means of the hour before the start and of the "
        + "hour after the end; their difference also holds what sun, vents and heating did meanwhile, so it is not the effect of the water alone.");

    private static string Sentence(ImmutableArray<Watering> waterings, WeekFacts facts)
    {
        int unclear = waterings.Count(w => w.WetsLeaves == true && w.AfterCutOff is null);
        string open = unclear == 0 ? "" : Phrase.Of($"; of {unclear} it is not known");
        string wet = facts.LeafWettings is > 0 and { } n
            ? Phrase.Of($"{n} wetted leaves, {facts.LateLeafWettings} of them after the cut-off{open}")
            : Phrase.Of("none is known to have wetted leaves");
        int unknownMethod = waterings.Count(w => w.WetsLeaves is null);
        string method = unknownMethod == 0 ? "" : Phrase.Of($" Of {unknownMethod} the data do not tell how the water came.");
        return Phrase.Of($"Of {Words.Count(waterings.Length, "watering", "waterings")}, {wet}.{method}");
    }

    private static void Row(HtmlBuilder body, Watering w, DisplayUnits units)
    {
        string when = w.End is { } end ? LocalTimes.Span(w.Start, end) : Phrase.Of($"{LocalTimes.Moment(w.Start)}, end not known");
        string cutOff = w.CutOff is { } c ? LocalTimes.Clock(c) : w.WetsLeaves == false ? Phrase.Of("leaves stay dry") : w.CutOffByFilm == true ? Phrase.Of("none: too dull to dry") : DisplayUnits.NotKnown;
        string late = w is { WetsLeaves: true, AfterCutOff: true } ? "late" : "";
        body.Add($"<tr class=\"{late}\"><th scope=\"row\">{when}</th><td>{Words.Method(w.Method)}</td><td>{(w.Bench.Length == 0 ? Html.Text(Phrase.Of("whole house")) : Html.Name(w.Bench))}</td>");
        body.Add($"<td>{units.Volume(w.Litres)}</td><td>{(w.Sunset is { } s ? LocalTimes.Clock(s) : DisplayUnits.NotKnown)}</td><td>{cutOff}</td><td>{InTime(w)}</td><td>{Caused(w)}</td>");
        body.Add($"<td>{Pair(w.AbsoluteHumidityBeforeGm3, w.AbsoluteHumidityAfterGm3, 1, "g/m³")}</td><td>{Rise(w.AbsoluteHumidityRiseGm3)}</td>");
        body.Line($"<td>{Pair(w.RelativeHumidityBeforePct, w.RelativeHumidityAfterPct, 0, "%")}</td></tr>");
    }

    private static string InTime(Watering w) => (w.WetsLeaves, w.AfterCutOff) switch
    {
        (false, _) => Phrase.Of("leaves stay dry"),
        (_, true) => Phrase.Of("no"),
        (_, false) => Phrase.Of("yes"),
        _ => DisplayUnits.NotKnown,
    };

    private static string Caused(Watering w) => w is { WetsLeaves: true, AfterCutOff: true } ? w.RiskHoursCaused is { } hours ? $"{DisplayUnits.Number(hours.Value, 1)} ({Words.Range(hours)})" : DisplayUnits.NotKnown : "";

    /// <summary>Rises of the humidity that may be waterings that nobody wrote down.</summary>
    private static void Hints(HtmlBuilder body, ImmutableArray<WateringHint>? hints)
    {
        if (hints is not { IsEmpty: false } found)
        {
            return;
        }

        body.Line($"<p>A watering that the log does not have? The humidity rose suddenly, and sun, vents, outside air and the waterings known do not explain it:</p><ul>");
        foreach (WateringHint hint in found)
        {
            body.Line($"<li>{LocalTimes.Moment(hint.At)}: {DisplayUnits.VapourDensity(hint.RiseGm3)} in a quarter of an hour, {DisplayUnits.Number(hint.Score, 1)} times the usual scatter at that time of day.</li>");
        }

        body.Line($"</ul><p class=\"note\">A door, a spray or a hose on the floor looks the same. In simulated houses it found three in ten of a boom's rounds or more, and up to one in two weeks that was none.</p>");
    }

    private static void Floods(HtmlBuilder body, FloodReport? floods)
    {
        if (floods is null)
        {
            return;
        }

        int dull = floods.Floods.Count(f => f.Dull == true), unknown = floods.Floods.Count(f => f.Dull is null);
        string open = unknown == 0 ? "" : Phrase.Of($" Of {unknown} the light of the day is not known.");
        body.Line($"<p>{Words.Count(floods.Floods.Length, "flood", "floods")} of benches or floors, {dull} on days with less than {DisplayUnits.Number(floods.LimitMJm2, 1)} MJ/m² of sun over the crop.{open} Water in the air over the six hours after, beyond alike hours without a flood: on dull days {Effect(floods.Dull)}, on bright days {Effect(floods.Bright)}.</p>");
    }

    private static string Effect(FloodEffect effect) => effect.EffectGm3 is not { } gm3
        ? Phrase.Of($"not known (none of {Words.Count(effect.Rounds, "round", "rounds")} could be compared)")
        : gm3.Low == gm3.High ? Phrase.Of($"{DisplayUnits.VapourDensity(gm3.Value)} ({effect.Matched} of {Words.Count(effect.Rounds, "round", "rounds")} compared, too few for a range)")
        : Phrase.Of($"{DisplayUnits.VapourDensity(gm3.Value)} ({DisplayUnits.Number(gm3.Low, 1)} to {DisplayUnits.Number(gm3.High, 1)}; {effect.Matched} of {Words.Count(effect.Rounds, "round", "rounds")})");

    private static string Pair(double? before, double? after, int decimals, string unit) => before is null && after is null
        ? DisplayUnits.NotKnown
        : $"{DisplayUnits.Number(before, decimals)}, {DisplayUnits.Number(after, decimals)} {unit}";

    private static string Rise(Estimate? rise) => rise is null
        ? DisplayUnits.NotKnown
        : Phrase.Of($"{DisplayUnits.VapourDensity(rise.Value)} ({DisplayUnits.Number(rise.Low, 1)} to {DisplayUnits.Number(rise.High, 1)})");
}
