using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Charts;

/// <summary>A chart in the page: an empty frame with its text alternative, the figure that page.js draws into it, and a note that
/// the script hides: it stands where scripts are off or their files are missing.</summary>
internal static class ChartMarkup
{
    /// <summary>The chart's HTML.</summary>
    /// <param name="id">Fixed id in the page.</param>
    /// <param name="label">Text alternative in one sentence; the table named in it carries the numbers.</param>
    /// <param name="chart">The chart.</param>
    public static Html Of(string id, string label, WeekChart chart)
    {
        Html json = new(FigureJson.Write(chart));
        int panels = chart.Panels.Count;
        return new HtmlBuilder()
            .Line($"<div class=\"plot panels{panels}\" id=\"{id}\" role=\"img\" aria-label=\"{label}\" data-figure=\"{id}-figure\"></div>")
            .Line($"<script type=\"application/json\" id=\"{id}-figure\">{json}</script>")
            .Line($"<p class=\"note undrawn\">The chart needs JavaScript; its numbers stand in the hourly table and in the data file.</p>")
            .ToHtml();
    }
}
