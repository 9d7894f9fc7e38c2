using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>Findings as a numbered list: what was found, what to do, with what care, and what it rests on.</summary>
internal static class FindingMarkup
{
    public static Html List(IEnumerable<Finding> findings, CellContext context)
    {
        HtmlBuilder list = new();
        list.Line($"<ul class=\"findings\">");
        foreach (Finding finding in findings)
        {
            One(list, finding);
        }

        list.Line($"</ul>");
        if (context.Units.System == UnitSystem.Us)
        {
            list.Line($"<p class=\"note\">Findings are worded in metric units.</p>");
        }

        return list.ToHtml();
    }

    private static void One(HtmlBuilder list, Finding finding)
    {
        list.Line($"<li id=\"finding-{finding.Rank}\"><p class=\"found\">{finding.Text}</p>");
        Labelled(list, "Do", "do", finding.Action);
        Labelled(list, "Mind", "mind", finding.Caution);
        if (finding.Evidence.Length > 0)
        {
            list.Line($"<details><summary>What this rests on</summary><ul>");
            foreach (string evidence in finding.Evidence)
            {
                list.Line($"<li>{evidence}</li>");
            }

            list.Line($"</ul></details>");
        }

        list.Line($"</li>");
    }

    private static void Labelled(HtmlBuilder list, string label, string style, string text)
    {
        if (text.Length > 0)
        {
            list.Line($"<p class=\"{style}\"><b>{label}:</b> {text}</p>");
        }
    }
}
