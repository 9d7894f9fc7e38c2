using System.Globalization;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Pages;

/// <summary>A house's risk hours week by week as a small line; a gap where they are not known. Every house has the same scale.</summary>
internal static class SparkLine
{
    private const double Step = 9, Height = 28, Edge = 3;
    private const int Most = 26;

    /// <summary>The line, oldest week left, with its finding as text.</summary>
    /// <param name="ofHouse">Pages of a house, newest first.</param>
    /// <param name="largest">Largest risk hours of any house.</param>
    public static Html Of(IEnumerable<SiteEntry> ofHouse, double largest)
    {
        HouseWeekSummary[] weeks = [.. ofHouse.Select(e => e.Summary).Take(Most).Reverse()];
        HtmlBuilder svg = new();
        double width = (2 * Edge) + (Step * Math.Max(0, weeks.Length - 1));
        svg.Add($"<svg class=\"spark\" role=\"img\" viewBox=\"0 0 {Plain(width)} {Plain(Height)}\" width=\"{Plain(width)}\" height=\"{Plain(Height)}\" aria-label=\"{Text(weeks)}\">");
        List<string> run = [];
        for (int i = 0; i <= weeks.Length; i++)
        {
            if (i < weeks.Length && weeks[i].RiskHours is double hours)
            {
                run.Add($"{Plain(Edge + (Step * i))},{Plain(Y(hours, largest))}");
                continue;
            }

            Line(svg, run);
            run.Clear();
        }

        if (weeks.Length > 0 && weeks[^1].RiskHours is double last)
        {
            svg.Add($"<circle cx=\"{Plain(Edge + (Step * (weeks.Length - 1)))}\" cy=\"{Plain(Y(last, largest))}\" r=\"2.5\"/>");
        }

        return svg.Add($"</svg>").ToHtml();
    }

    private static void Line(HtmlBuilder svg, List<string> run)
    {
        if (run.Count > 1)
        {
            svg.Add($"<polyline points=\"{string.Join(' ', run)}\"/>");
        }
        else if (run.Count == 1)
        {
            string[] at = run[0].Split(',');
            svg.Add($"<circle cx=\"{at[0]}\" cy=\"{at[1]}\" r=\"1.5\"/>");
        }
    }

    private static string Text(HouseWeekSummary[] weeks)
    {
        HouseWeekSummary[] known = [.. weeks.Where(w => w.RiskHours is not null)];
        return known.Length == 0 ? Phrase.Of("risk hours not known")
            : Phrase.Of($"{Words.Count(weeks.Length, "period", "periods")}, risk hours from {DisplayUnits.Number(known.Min(w => w.RiskHours), 0)} to {DisplayUnits.Number(known.Max(w => w.RiskHours), 0)}, last {DisplayUnits.Number(known[^1].RiskHours, 0)}");
    }

    private static double Y(double hours, double largest) => Height - Edge - ((Height - (2 * Edge)) * hours / Math.Max(1, largest));

    private static string Plain(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
