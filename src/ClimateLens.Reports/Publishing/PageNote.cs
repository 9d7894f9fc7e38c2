using System.Text.Json;

namespace ClimateLens.Reports.Publishing;

/// <summary>
/// What is known of a page that was made by itself, beside it until the site's index and state take it up: pages that are made side by side
/// share no file that changes.
/// </summary>
internal static class PageNote
{
    private const string Name = ".entry.json";

    /// <summary>The note of a folder; null where there is none, or it is damaged.</summary>
    public static SiteEntry? Read(SiteFolder site, string folder)
    {
        if (site.Read($"{folder}/{Name}") is not { } json)
        {
            return null;
        }

        try
        {
            SiteEntry? entry = JsonSerializer.Deserialize(json, SiteStateContext.Default.SiteEntry);
            return entry?.Summary?.Page == $"{folder}/index.html" ? entry : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Writes it.</summary>
    public static void Write(SiteFolder site, string folder, SiteEntry entry)
        => site.Write($"{folder}/{Name}", JsonSerializer.SerializeToUtf8Bytes(entry, SiteStateContext.Default.SiteEntry));

    /// <summary>Removes it if it is there.</summary>
    public static void Remove(SiteFolder site, string folder) => site.Delete($"{folder}/{Name}");
}
