using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Cells;

/// <summary>
/// Findings as a list: in a line what to do and the risk hours that it would have saved; below it what was found, what to do, with what care,
/// and what it rests on. Wide screens and paper show all but the last two at once; a narrow screen shows the line, the rest by a tap.
/// </summary>
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
        list.Line($"<li id=\"finding-{finding.Rank}\"><details class=\"finding\"><summary>{Short(finding)}</summary>");
        list.Line($"<p class=\"found\">{finding.Text}</p>");
        Labelled(list, Phrase.Of("Do"), "do", finding.Action);
        if (finding.Caution.Length > 0 || finding.Evidence.Length > 0)
        {
            list.Line($"<details class=\"rests\"><summary>What to mind, and what this rests on</summary>");
            Labelled(list, Phrase.Of("Mind"), "mind", finding.Caution);
            if (finding.Evidence.Length > 0)
            {
                list.Line($"<ul>");
                foreach (string evidence in finding.Evidence)
                {
                    list.Line($"<li>{evidence}</li>");
                }

                list.Line($"</ul>");
            }

            list.Line($"</details>");
        }

        list.Line($"</details></li>");
    }

    private static Html Short(Finding finding)
    {
        string title = finding.Title.Length > 0 ? finding.Title : finding.Text;
        return finding.RiskHoursAvoided is not { } saved
            ? HtmlBuilder.Of($"<b>{title}</b>")
            : HtmlBuilder.Of($"<b>{title}</b> <span class=\"saves\">saves {DisplayUnits.Number(saved.Value, 0)}\u00A0h</span> <span class=\"range\">({Words.Range(saved)})</span>");
    }

    private static void Labelled(HtmlBuilder list, string label, string style, string text)
    {
        if (text.Length > 0)
        {
            list.Line($"<p class=\"{style}\"><b>{label}:</b> {text}</p>");
        }
    }
}
