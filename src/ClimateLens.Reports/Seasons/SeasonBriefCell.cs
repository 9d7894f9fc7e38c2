using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Seasons;

/// <summary>The best and the worst weeks.</summary>
internal sealed class SeasonBriefCell : ISeasonCell
{
    private const int Most = 3;
    private const double WholeShare = 0.9;

    /// <inheritdoc/>
    public string Name => "seasonBrief";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("Which weeks were worst, and which best?");

    /// <inheritdoc/>
    public CellContent Render(SeasonContext context)
    {
        SiteEntry[] known = [.. context.Weeks.Where(w => w.Summary.RiskHours is not null)];
        if (known.Length == 0)
        {
            return CellContent.Unanswered(Phrase.Of("Not known: no week of this house carries a total of risk hours."));
        }

        SiteEntry[] whole = [.. known.Where(w => w.Summary.HoursWithData >= WholeShare * w.Summary.ExpectedHours)];
        SiteEntry[] worst = [.. whole.OrderByDescending(w => w.Summary.RiskHours).Take(Most)], best = [.. whole.OrderBy(w => w.Summary.RiskHours).Take(Most)];
        HtmlBuilder body = new();
        if (whole.Length > 1)
        {
            body.Line($"<p>Worst: {Links(worst)}. Best: {Links(best)}.</p>");
            body.Line($"<p class=\"note\">Where ranges overlap, the order may be the sensors' doing. {(whole.Length < known.Length ? Phrase.Of($"{Words.Count(known.Length - whole.Length, "week", "weeks")} with less than nine tenths of the hours left out.") : "")}</p>");
        }

        string trend = known.Length < 4 ? "" : Trend(known);
        return new CellContent(
            Phrase.Of($"{Words.Count(known.Length, "week", "weeks")} with {DisplayUnits.Number(known.Sum(w => w.Summary.RiskHours), 0)} risk hours together, {DisplayUnits.Number(known.Average(w => w.Summary.RiskHours), 0)} a week on the mean.{trend}"), body.ToHtml());
    }

    private static Html Links(SiteEntry[] weeks)
    {
        HtmlBuilder links = new();
        for (int i = 0; i < weeks.Length; i++)
        {
            HouseWeekSummary s = weeks[i].Summary;
            links.Add($"{(i == 0 ? "" : ", ")}<a href=\"{s.Period}/index.html\">{SitePeriod.Of(s.Period).Name}</a> ({DisplayUnits.Number(s.RiskHours, 0)}, {DisplayUnits.Number(s.Low, 0)} to {DisplayUnits.Number(s.High, 0)})");
        }

        return links.ToHtml();
    }

    /// <summary>The last two weeks against the two before; said only where their ranges part.</summary>
    private static string Trend(SiteEntry[] known)
    {
        HouseWeekSummary[] last = [.. known[^2..].Select(w => w.Summary)], before = [.. known[^4..^2].Select(w => w.Summary)];
        return last.Max(w => w.High) < before.Min(w => w.Low) ? Phrase.Of(" The last two weeks were better than the two before, whatever the sensors are off by.")
            : last.Min(w => w.Low) > before.Max(w => w.High) ? Phrase.Of(" The last two weeks were worse than the two before, whatever the sensors are off by.")
            : Phrase.Of(" Between the last two weeks and the two before, their ranges show no difference.");
    }
}
