using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Pages;

/// <summary>What every page shares: head, skip link, banner, landmarks.</summary>
internal static class PageShell
{
    // Nothing from outside: no connection, font, frame or form; scripts only from files beside the page. The drawing
    // library sets inline styles. "file:" beside 'self': a page opened from a disk has no origin of its own.
    public const string Policy =
        "default-src 'none'; script-src 'self' file:; style-src 'self' file: 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>A whole page.</summary>
    /// <param name="title">Title in the browser's bar.</param>
    /// <param name="root">Path from the page to the site's folder: "" or "../../".</param>
    /// <param name="made">What the page was made from, for <c>SitePublisher.IsCurrent</c>; empty for the index.</param>
    /// <param name="charts">Whether the page draws charts.</param>
    /// <param name="invented">Whether the nursery is invented.</param>
    /// <param name="header">Content of the page's header.</param>
    /// <param name="main">Content of the page.</param>
    /// <param name="notebook">Name of the notebook, by which the style sheet knows the page for the wall; empty for pages of none.</param>
    /// <param name="feed">Whether the site's feed is named.</param>
    public static string Render(string title, string root, string made, bool charts, bool invented, Html header, Html main, bool feed = false, string notebook = "")
    {
        HtmlBuilder page = new();
        page.Line($"<!DOCTYPE html>").Line($"<html lang=\"{Language.Current.Code}\">").Line($"<head>").Line($"<meta charset=\"utf-8\">");
        if (made.Length > 0)
        {
            page.Line($"<meta name=\"{PageMark.Name}\" content=\"{made}\">");
        }

        page.Line($"<meta http-equiv=\"Content-Security-Policy\" content=\"{new Html(Policy)}\">");
        page.Line($"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        page.Line($"<title>{title}</title>");
        page.Line($"<link rel=\"icon\" href=\"data:,\">").Line($"<link rel=\"stylesheet\" href=\"{root}assets/site.css\">");
        if (feed)
        {
            page.Line($"<link rel=\"alternate\" type=\"application/atom+xml\" href=\"{root}feed.xml\">");
        }

        if (charts)
        {
            page.Line($"<script defer src=\"{root}assets/{Publishing.SiteAssets.ChartLibrary}\"></script>");
            page.Line($"<script defer src=\"{root}assets/page.js\"></script>");
        }

        page.Line($"</head>").Line($"<body>").Line($"<a class=\"skip\" href=\"#main\">To the content</a>");
        page.Line($"<header>");
        if (invented)
        {
            page.Line($"<p class=\"invented\" role=\"note\"><strong>Invented demonstration data.</strong> This nursery does not exist; nothing here was measured.</p>");
        }

        page.Line(header).Line($"</header>").Line($"<main id=\"main\" data-notebook=\"{notebook}\">").Line(main).Line($"</main>");
        page.Line($"<footer><p>Advice from sensor data, for people who know the crop. Look before you act.</p></footer>");
        return page.Line($"</body>").Line($"</html>").ToHtml().ToString();
    }
}
