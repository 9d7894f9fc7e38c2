using System.Text.RegularExpressions;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Tests;

/// <summary>Short ways to a cell's and a page's HTML.</summary>
internal static partial class Rendered
{
    public static CellContent Cell(IReportCell cell, Review review, UnitSystem units = UnitSystem.Metric)
        => cell.Render(CellContext.Of(review, new DisplayUnits(units), DataFiles.Of(review).Keys));

    public static RenderedPage Page(Review review, UnitSystem units = UnitSystem.Metric, IReadOnlyList<IReportCell>? cells = null)
        => HouseWeekPage.Render(review, new DisplayUnits(units), DataFiles.Of(review).Keys, cells ?? HouseWeekCells.All);

    /// <summary>What a cell shows as text for a golden file: sentence, body and method.</summary>
    public static string Fragment(CellContent content) => $"{content.Sentence}\n---\n{content.Body}---\n{content.Method}\n";

    /// <summary>Tag names that open but never close, or close without having been opened.</summary>
    public static IReadOnlyList<string> UnbalancedTags(string html)
    {
        HashSet<string> single = ["meta", "link", "br", "img", "path"];
        Stack<string> open = [];
        List<string> wrong = [];
        string bare = Scripts().Replace(html, "");
        foreach (Match tag in Tags().Matches(bare))
        {
            string name = tag.Groups[2].Value.ToLowerInvariant();
            if (single.Contains(name))
            {
                continue;
            }

            if (tag.Groups[1].Length == 0)
            {
                open.Push(name);
            }
            else if (open.Count == 0 || open.Pop() != name)
            {
                wrong.Add(tag.Value);
            }
        }

        return [.. wrong, .. open];
    }

    [GeneratedRegex("<script type=\"application/json\".*?</script>", RegexOptions.Singleline)]
    private static partial Regex Scripts();

    [GeneratedRegex("<(/?)([a-zA-Z][a-zA-Z0-9]*)[^>]*>")]
    private static partial Regex Tags();
}
