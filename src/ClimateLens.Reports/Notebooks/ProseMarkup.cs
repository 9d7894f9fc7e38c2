using System.Text.Json;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;
using Markdig;

namespace ClimateLens.Reports.Notebooks;

/// <summary>Prose of a notebook as markup: Markdown with tables; HTML in it is shown as text, links lead to the page itself, other pages of the site or the web.</summary>
internal static class ProseMarkup
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().Build();

    private static readonly string[] Schemes = ["http", "https", "mailto"];

    /// <summary>Renders prose with the values of a review.</summary>
    public static Html Of(string markdown, Lazy<JsonDocument> review)
    {
        (string marked, IReadOnlyList<string> values) = Marked(markdown, review);
        Markdig.Syntax.MarkdownDocument document = Markdown.Parse(marked, Pipeline);
        foreach (Markdig.Syntax.Inlines.LinkInline link in Markdig.Syntax.MarkdownObjectExtensions.Descendants<Markdig.Syntax.Inlines.LinkInline>(document))
        {
            bool known = link.Url is { } url && (!url.Contains(':', StringComparison.Ordinal) || Schemes.Any(s => url.StartsWith(s + ":", StringComparison.OrdinalIgnoreCase)));
            link.Url = known && !link.IsImage ? link.Url : "#main"; // no script, and nothing that a page would fetch
            link.IsImage = false;
        }

        foreach (Markdig.Syntax.HeadingBlock heading in Markdig.Syntax.MarkdownObjectExtensions.Descendants<Markdig.Syntax.HeadingBlock>(document))
        {
            heading.Level = Math.Min(6, heading.Level + 1); // the page has its own first heading
        }

        return new Html(ProseValues.PutBack(document.ToHtml(Pipeline), values, Html.Encode));
    }

    /// <summary>Prose with the values of a review, as Markdown.</summary>
    public static string Filled(string markdown, Lazy<JsonDocument> review)
    {
        (string marked, IReadOnlyList<string> values) = Marked(markdown, review);
        return ProseValues.PutBack(marked, values, Html.Encode);
    }

    private static (string Marked, IReadOnlyList<string> Values) Marked(string markdown, Lazy<JsonDocument> review)
        => ProseValues.Replace(Language.Current.Translate(markdown.Trim()), review);
}
