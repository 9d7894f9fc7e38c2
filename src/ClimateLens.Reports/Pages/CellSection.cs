using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Pages;

/// <summary>One cell as a section of the page; a cell that throws leaves a note in its place.</summary>
internal static class CellSection
{
    /// <summary>The section; empty when the cell has nothing to say.</summary>
    public static Html Render(IReportCell cell, CellContext context, out bool threw)
    {
        threw = false;
        try
        {
            CellContent content = cell.Render(context);
            return content.IsNothing ? Html.Empty : Section(cell, content, context.Values.Text("heading") ?? cell.Heading);
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            // Any bug of one part: a grower still gets the others, and the command line reports the part by name.
            threw = true;
            return Failed(cell, problem);
        }
    }

    private static Html Section(IReportCell cell, CellContent content, string heading)
    {
        HtmlBuilder section = Open(cell, heading);
        if (content.Sentence.Length > 0)
        {
            section.Line($"<p class=\"said\">{content.Sentence}</p>");
        }

        section.Line(content.Body);
        if (content.Method.Length > 0)
        {
            section.Line($"<p class=\"method\">{content.Method}</p>");
        }

        return section.Line($"</section>").ToHtml();
    }

    private static Html Failed(IReportCell cell, Exception problem) => Open(cell, cell.Heading)
        .Line($"<p class=\"failed\">This part could not be made ({problem.GetType().Name}: {problem.Message}). The rest of the page does not depend on it.</p>")
        .Line($"</section>")
        .ToHtml();

    private static HtmlBuilder Open(IReportCell cell, string heading) => new HtmlBuilder()
        .Line($"<section id=\"{cell.Name}\" aria-labelledby=\"{cell.Name}-heading\">")
        .Line($"<h2 id=\"{cell.Name}-heading\">{heading}</h2>");
}
