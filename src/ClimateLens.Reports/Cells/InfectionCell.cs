using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Notebooks;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>Wet periods with their grade, and plain published limits beside them: whether the weather favoured grey mould.</summary>
public sealed class InfectionCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "greyMould";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Did the weather favour grey mould?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Methods = ["wetPeriods", "wetnessOfLeaves"], Files = [DataFiles.WetPeriods] };

    /// <inheritdoc/>
    public IReadOnlyList<string> Needs => ["wetPeriods"];

    /// <inheritdoc/>
    public CellGives Gives => CellGives.Sentence | CellGives.Table | CellGives.Data;

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Review.WetPeriods is not { } periods)
        {
            return CellContent.Unanswered(Phrase.Of($"Not known. " + $"{context.WhyNotKnown("wetPeriods", Phrase.Of("It takes air temperature and humidity."))}"));
        }

        HtmlBuilder body = new();
        if (!periods.IsEmpty)
        {
            Periods(body, periods, context.Units);
        }

        Limits(body, context.Review.PublishedLimits);
        return new CellContent(Sentence(periods), body.ToHtml(), Method);
    }

    private static string Method =>
        Phrase.Of("Weather that favours grey mould, not disease: the index was fitted to grape berries (Broome et al. 1995; 12 to 30 °C, 4 to 20 h) and stands in for ornamentals, for which none is published. "
        + "It ranks wet periods and tells no share of plants. A dry break of up to four hours does not end a period; it is not in its hours.");

    private static string Sentence(ImmutableArray<WetPeriod> periods)
    {
        if (periods.IsEmpty)
        {
            return Phrase.Of("By the film model leaves stayed dry: the weather did not favour grey mould.");
        }

        int strongly = periods.Count(p => p.Grade == "high"), some = periods.Count(p => p.Grade is "low" or "moderate");
        WetPeriod? worst = periods.Where(p => p.Index is not null).MaxBy(p => p.Index);
        return strongly + some == 0 || worst is null
            ? Phrase.Of($"Hardly: none of {Words.Count(periods.Length, "wet period", "wet periods")} was long and mild enough to score.")
            : Phrase.Of($"Of {Words.Count(periods.Length, "wet period", "wet periods")} {Favoured(strongly, some)}; most the one from {LocalTimes.Moment(worst.Start)}, {DisplayUnits.Number(worst.Hours, 1)} wet hours.");
    }

    private static string Favoured(int strongly, int some) => (strongly, some) switch
    {
        (0, _) => Phrase.Of($"{some} favoured it to a degree"),
        (_, 0) => Phrase.Of($"{strongly} favoured it strongly"),
        _ => Phrase.Of($"{strongly} favoured it strongly and {some} to a degree"),
    };

    private static void Periods(HtmlBuilder body, ImmutableArray<WetPeriod> periods, DisplayUnits units)
    {
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Wet periods\" tabindex=\"0\"><table class=\"data\"><caption>Wet periods, local time</caption><thead><tr><th scope=\"col\">From</th><th scope=\"col\">To</th><th scope=\"col\">Wet h</th><th scope=\"col\">Leaf {units.TemperatureSymbol}</th><th scope=\"col\">Index</th><th scope=\"col\">Favoured grey mould</th></tr></thead><tbody>");
        foreach (WetPeriod period in periods)
        {
            string index = period.Index is { } known ? DisplayUnits.Number(known, 2) : "";
            body.Line($"<tr><th scope=\"row\">{LocalTimes.Moment(period.Start)}</th><td>{LocalTimes.Moment(period.End)}</td><td>{DisplayUnits.Number(period.Hours, 1)}{(period.Open ? "+" : "")}</td><td>{DisplayUnits.Number(units.TemperatureNumber(period.MeanTemperatureC), 1)}</td><td>{index}</td><td>{GradeWords(period)}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        if (periods.Any(p => p.Open))
        {
            body.Line($"<p class=\"note\">+: the data begin or end within the period; it may be longer.</p>");
        }
    }

    private static string GradeWords(WetPeriod period)
    {
        string grade = period.Grade switch
        {
            "none" => Phrase.Of("no"),
            "low" => Phrase.Of("a little"),
            "moderate" => Phrase.Of("moderately"),
            "high" => Phrase.Of("strongly"),
            _ => Phrase.Of("not known"),
        };
        return period.OutsideFit ? Phrase.Of($"{grade} (outside the trials)") : grade;
    }

    private static void Limits(HtmlBuilder body, ImmutableArray<PublishedLimit> limits)
    {
        if (limits.IsEmpty)
        {
            return;
        }

        body.Line($"<h3>Plain limits that are published</h3>");
        body.Line($"<ul>");
        foreach (PublishedLimit limit in limits)
        {
            string passed = limit.Passed switch { true => Phrase.Of(" Over the limit."), false => Phrase.Of(" Within the limit."), null => "" };
            body.Line($"<li>{limit.Text}{passed} <span class=\"source\">{limit.Source}</span></li>");
        }

        body.Line($"</ul>");
    }
}
