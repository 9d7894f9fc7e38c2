namespace ClimateLens.Browser.Tests;

/// <summary>Pages by kind.</summary>
internal static class Pages
{
    public static string AddressOf(SampleSite site, string kind) => kind switch
    {
        "rich" => site.Rich,
        "empty" => site.Empty,
        "hostile" => site.Hostile,
        "index" => site.Index,
        "compare" => site.Compare,
        "season" => site.Season,
        "sensors" or "validation" or "wall" => site.RichPage($"{kind}.html"),
        "es" or "nl" => site.In(kind, "index.html"),
        "single" => site.In("en", "index.single.html"),
        "failing" => site.Failing,
        _ => throw new ArgumentException($"There is no page \"{kind}\".", nameof(kind)),
    };
}
