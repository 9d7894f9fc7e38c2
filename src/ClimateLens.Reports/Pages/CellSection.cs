using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Pages;

/// <summary>One cell as a section of the page; a cell that throws leaves a note in its place.</summary>
internal static class CellSection
{
    /// <summary>The section; empty when the cell has nothing to say.</summary>
    /// <param name="name">Name of the cell, also its id in the page.</param>
    /// <param name="heading">Its heading.</param>
    /// <param name="answer">Makes its content.</param>
    /// <param name="content">What it answered; null where it threw.</param>
    public static Html Render(string name, string heading, Func<CellContent> answer, out CellContent? content)
    {
        content = null;
        try
        {
            content = answer();
            return content.IsNothing ? Html.Empty : Section(name, heading, content);
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            // Any bug of one part: a grower still gets the others, and the command line reports the part by name.
            return Failed(name, heading, problem);
        }
    }

    private static Html Section(string name, string heading, CellContent content)
    {
        HtmlBuilder section = Open(name, heading);
        if (content.Sentence.Length > 0)
        {
            section.Line($"<p class=\"said\">{content.Sentence}</p>");
        }

        section.Line(content.Body);
        section.Line(content.Fold);
        return section.Line($"</section>").ToHtml();
    }

    private static Html Failed(string name, string heading, Exception problem) => Open(name, heading)
        .Line($"<p class=\"failed\">This part could not be made ({problem.GetType().Name}: {problem.Message}). The rest of the page does not depend on it.</p>")
        .Line($"</section>")
        .ToHtml();

    private static HtmlBuilder Open(string name, string heading) => new HtmlBuilder()
        .Line($"<section id=\"{name}\" aria-labelledby=\"{name}-heading\">")
        .Line($"<h2 id=\"{name}-heading\">{heading}</h2>");
}
