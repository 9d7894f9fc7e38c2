using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using ClimateLens.Reports.Pages;
using ClimateLens.Reports.Publishing;

namespace ClimateLens.Reports.Formats;

/// <summary>A page as one file to mail or keep: style, scripts and data in it, nothing beside it. Its links to other pages are gone.</summary>
internal static partial class SingleFile
{
    /// <summary>The file.</summary>
    /// <param name="html">The page as the site has it.</param>
    /// <param name="data">Data files beside it, by name.</param>
    public static string Of(string html, IReadOnlyDictionary<string, byte[]> data)
    {
        string[] scripts = [.. new[] { SiteAssets.ChartLibrary, SiteAssets.PageScript }.Select(SiteAssets.Text).Select(s => s.Replace("</script", "<\\/script", StringComparison.OrdinalIgnoreCase))];
        bool charts = LinkedScripts().IsMatch(html);
        string page = LinkedScripts().Replace(html, "");
        page = LinkedStyle().Replace(page, _ => $"<style>\n{SiteAssets.Text(SiteAssets.Style)}</style>");
        page = Feed().Replace(page, "");
        page = Navigation().Replace(page, "");
        page = page.Replace($"content=\"{PageShell.Policy}\"", $"content=\"{Policy(charts ? scripts : [])}\"", StringComparison.Ordinal);
        page = page.Replace("href=\"index.html#", "href=\"#", StringComparison.Ordinal);
        page = DataLink().Replace(page, link => data.TryGetValue(link.Groups[1].Value, out byte[]? file)
            ? $"download=\"{link.Groups[1].Value}\" href=\"data:{(link.Groups[1].Value.EndsWith(".json", StringComparison.Ordinal) ? "application/json" : "text/csv")};base64,{Convert.ToBase64String(file)}\""
            : link.Value);
        return charts ? page.Replace("</body>", string.Concat(scripts.Select(s => $"<script>{s}</script>\n")) + "</body>", StringComparison.Ordinal) : page;
    }

    // Only the scripts in the file may run: each is named by its hash.
    private static string Policy(string[] scripts)
    {
        string allowed = scripts.Length == 0 ? "'none'" : string.Join(' ', scripts.Select(s => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(s)))}'"));
        return $"default-src 'none'; script-src {allowed}; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";
    }

    [GeneratedRegex("<script defer src=\"[^\"]*\"></script>\n")]
    private static partial Regex LinkedScripts();

    [GeneratedRegex("<link rel=\"stylesheet\" href=\"[^\"]*\">")]
    private static partial Regex LinkedStyle();

    [GeneratedRegex("<link rel=\"alternate\"[^>]*>\n")]
    private static partial Regex Feed();

    [GeneratedRegex("<nav [^>]*>.*?</nav>\n", RegexOptions.Singleline)]
    private static partial Regex Navigation();

    [GeneratedRegex("href=\"([a-z-]+\\.(?:csv|json))\"")]
    private static partial Regex DataLink();
}
