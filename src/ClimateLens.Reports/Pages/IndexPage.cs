using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>The site's first page: every house by every week, newest first.</summary>
internal static class IndexPage
{
    private const int MostChanges = 12;

    /// <param name="entries">All published pages, newest first, then by house.</param>
    /// <param name="changes">What changed since the site was last complete.</param>
    public static string Render(IReadOnlyList<SiteEntry> entries, IReadOnlyList<SiteChange> changes)
    {
        string[] nurseries = [.. entries.Select(e => e.Nursery).Distinct(StringComparer.Ordinal)];
        string name = nurseries.Length == 0 ? Phrase.Of("Climate reviews") : string.Join(", ", nurseries);
        Html header = HtmlBuilder.Of($"<h1>{Html.Name(name)}: risk hours by house and week</h1>");
        Html main = entries.Count == 0
            ? HtmlBuilder.Of($"<p class=\"said\">No week has been reviewed yet.</p>")
            : Grid(entries, changes);
        return PageShell.Render(Phrase.Of($"{name}: climate reviews"), "", "", charts: false, entries.Any(e => e.Invented), header, main, feed: true);
    }

    private static Html Grid(IReadOnlyList<SiteEntry> entries, IReadOnlyList<SiteChange> changes)
    {
        List<(string Id, string Name)> houses = Houses(entries);
        HtmlBuilder body = new();
        body.Line($"<p class=\"said\">{Sentence(entries, houses.Count)}</p>");
        body.Line(Changes(changes));
        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Reviews by week and house, scrolls sideways\" tabindex=\"0\"><table class=\"index\"><caption>Risk hours with their range over sensor error; newest week first</caption>");
        body.Add($"<thead><tr><th scope=\"col\">Week</th>");
        foreach ((_, string name) in houses)
        {
            body.Add($"<th scope=\"col\">{Html.Name(name)}</th>");
        }

        body.Line($"</tr></thead><tbody>");
        double largest = entries.Max(e => e.Summary.RiskHours) ?? 0;
        body.Add($"<tr><th scope=\"row\">Week by week</th>");
        foreach ((string id, _) in houses)
        {
            body.Add($"<td><a href=\"house-{id}/season.html\"><span class=\"vh\">The season of {Html.Name(houses.First(h => h.Id == id).Name)}</span>{SparkLine.Of(entries.Where(e => e.Summary.House == id), largest)}</a><span>{Trend(entries.First(e => e.Summary.House == id))}</span></td>");
        }

        body.Line($"</tr>");
        foreach (IGrouping<string, SiteEntry> period in entries.GroupBy(e => e.Summary.Period))
        {
            SitePeriod name = SitePeriod.Of(period.Key);
            body.Add($"<tr><th scope=\"row\">{Words.Capital(name.Name)}<span>{name.Dates}</span></th>");
            foreach ((string id, _) in houses)
            {
                body.Add($"{Cell(period.FirstOrDefault(e => e.Summary.House == id))}");
            }

            body.Line($"</tr>");
        }

        return body.Line($"</tbody></table></div>").ToHtml();
    }

    private static Html Changes(IReadOnlyList<SiteChange> changes)
    {
        if (changes.Count == 0)
        {
            return Html.Empty;
        }

        HtmlBuilder list = new();
        list.Line($"<h2>Since the run before</h2><ul class=\"changes\">");
        foreach (SiteChange change in changes.Take(MostChanges))
        {
            HouseWeekSummary s = change.Now.Summary;
            string hours = s.RiskHours is null ? Phrase.Of("risk hours not known") : Words.Count((int)Math.Round(s.RiskHours.Value), "risk hour", "risk hours");
            string was = change.IsNew ? Phrase.Of("new, ") : "";
            string before = change.IsNew ? "" : Phrase.Of($", was {DisplayUnits.Number(change.RiskHours, 0)}");
            list.Line($"<li><a href=\"{s.Page}\">{Html.Name(s.HouseName)}, {SitePeriod.Of(s.Period).Name}</a>: {was}{hours}{before}</li>");
        }

        if (changes.Count > MostChanges)
        {
            list.Line($"<li>{Words.Count(changes.Count - MostChanges, "more page", "more pages")}</li>");
        }

        return list.Line($"</ul>").ToHtml();
    }

    /// <summary>The newest week against the week before it; a change is one where their ranges part.</summary>
    private static string Trend(SiteEntry newest) => newest.Summary is not { RiskHours: not null, Low: { } low, High: { } high } || newest.Before is not { } before
        ? Phrase.Of("against the week before: not known")
        : low > before.High ? Phrase.Of($"more than the week before ({DisplayUnits.Number(before.Value, 0)})")
        : high < before.Low ? Phrase.Of($"fewer than the week before ({DisplayUnits.Number(before.Value, 0)})")
        : Phrase.Of($"no clear change from the week before ({DisplayUnits.Number(before.Value, 0)})");

    private static Html Cell(SiteEntry? entry)
    {
        if (entry?.Summary is not { } summary)
        {
            return HtmlBuilder.Of($"<td class=\"none\"><span aria-hidden=\"true\">–</span><span class=\"vh\">not reviewed</span></td>");
        }

        string hours = summary.RiskHours is null ? DisplayUnits.NotKnown : $"{DisplayUnits.Number(summary.RiskHours, 0)}\u00A0h";
        string range = summary.RiskHours is null ? "" : Phrase.Of($"{DisplayUnits.Number(summary.Low, 0)} to {DisplayUnits.Number(summary.High, 0)}");
        string aside = summary.SetAside == 0 ? "" : Phrase.Of($"{Words.Count(summary.SetAside, "row", "rows")} set aside in its files");
        string was = entry.Was is { } before ? Phrase.Of($"was {DisplayUnits.Number(before, 0)} before its data or settings changed") : "";
        bool thin = summary.HoursWithData < 0.9 * summary.ExpectedHours;
        string coverage = summary.HoursWithData == 0
            ? Phrase.Of("no usable readings")
            : Phrase.Of($"{(thin ? Phrase.Of("only ") : "")}{summary.HoursWithData} of {summary.ExpectedHours} h with data");
        return HtmlBuilder.Of(
            $"<td><a href=\"{summary.Page}\"><strong>{hours}</strong><span class=\"vh\"> risk, {Html.Name(summary.HouseName)}, {SitePeriod.Of(summary.Period).Name}</span></a><span class=\"range\">{range}</span><span class=\"{(thin ? "thin" : "")}\">{coverage}</span><span>{aside}</span><span>{was}</span></td>");
    }

    private static List<(string Id, string Name)> Houses(IReadOnlyList<SiteEntry> entries)
        => [.. entries.DistinctBy(e => e.Summary.House).Select(e => (e.Summary.House, e.Summary.HouseName)).OrderBy(h => h.House, NaturalOrder.Instance)];

    private static string Sentence(IReadOnlyList<SiteEntry> entries, int houses)
    {
        int periods = entries.Select(e => e.Summary.Period).Distinct().Count();
        string highest = entries.Where(e => e.Summary.RiskHours is not null).MaxBy(e => e.Summary.RiskHours) is { } top
            ? Phrase.Of($" The most risk hours, {DisplayUnits.Number(top.Summary.RiskHours, 0)}, had {top.Summary.HouseName} in {SitePeriod.Of(top.Summary.Period).Name}.")
            : "";
        return Phrase.Of($"{Words.Count(entries.Count, "review", "reviews")} of {Words.Count(houses, "house", "houses")} over {Words.Count(periods, "period", "periods")}.{highest}");
    }
}
