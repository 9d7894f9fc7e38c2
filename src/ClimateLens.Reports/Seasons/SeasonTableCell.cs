using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Seasons;

/// <summary>Each week with its cover, waterings, pots and treatments.</summary>
internal sealed class SeasonTableCell : ISeasonCell
{
    /// <inheritdoc/>
    public string Name => "seasonTable";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What was each week like?");

    /// <inheritdoc/>
    public CellContent Render(SeasonContext context)
    {
        HtmlBuilder body = new();
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Weeks, scrolls sideways\" tabindex=\"0\"><table class=\"data wide\"><caption>Week by week, newest first</caption><thead><tr><th scope=\"col\">Week</th><th scope=\"col\">Risk hours (range)</th><th scope=\"col\">Hours with data</th><th scope=\"col\">Hours with leaves wet</th><th scope=\"col\">Ground cover</th><th scope=\"col\">Waterings over leaves, late</th><th scope=\"col\">Pot checks</th><th scope=\"col\">Jumps of level</th><th scope=\"col\">Dry pots</th><th scope=\"col\">Treatments</th></tr></thead><tbody>");
        foreach (SiteEntry week in context.Weeks.Reverse())
        {
            HouseWeekSummary s = week.Summary;
            SeasonFacts f = week.Season;
            string risk = s.RiskHours is null ? DisplayUnits.NotKnown : Phrase.Of($"{DisplayUnits.Number(s.RiskHours, 0)} ({DisplayUnits.Number(s.Low, 0)} to {DisplayUnits.Number(s.High, 0)})");
            string waterings = f.WettedLeaves is { } wetted ? $"{wetted}, {f.Late}" : DisplayUnits.NotKnown;
            body.Line($"<tr><th scope=\"row\"><a href=\"{s.Period}/index.html\">{SitePeriod.Of(s.Period).Name}</a></th><td>{risk}</td><td>{s.HoursWithData} of {s.ExpectedHours}</td><td>{DisplayUnits.Number(f.WetHours, 0)}</td><td>{Words.Share(f.Cover)}</td><td>{waterings}</td><td>{f.PotChecks}</td><td>{(f.PotChecks == 0 ? DisplayUnits.NotKnown : Words.Whole(f.Jumps))}</td><td>{(f.PotChecks == 0 ? DisplayUnits.NotKnown : Words.Whole(f.DryDowns))}</td><td>{f.Treatments}</td></tr>");
        }

        body.Line($"</tbody></table></div>");
        int late = context.Weeks.Sum(w => w.Season.Late), wet = context.Weeks.Sum(w => w.Season.WettedLeaves ?? 0);
        string said = context.Weeks.All(w => w.Season.WettedLeaves is null) ? Phrase.Of("Nothing tells of waterings.") : Phrase.Of($"{late} of {Words.Count(wet, "watering", "waterings")} over the leaves ended after the cut-off.");
        return new CellContent(said, body.ToHtml());
    }
}
