using ClimateLens.Nursery.Settings;

namespace ClimateLens.Reports.Pages;

/// <summary>A mark near the top of a page that says what it was made from.</summary>
internal static class PageMark
{
    public const string Name = "climatelens-input";

    /// <summary>Longest part of a page that must be read to find its mark. [bytes]</summary>
    public const int WithinBytes = 512;

    public static string Of(string inputHash, UnitSystem units) => $"{inputHash} {(units == UnitSystem.Us ? "us" : "metric")}";

    /// <summary>Whether the start of a page bears the mark.</summary>
    public static bool Bears(string startOfPage, string mark)
        => startOfPage.Contains($"<meta name=\"{Name}\" content=\"{Markup.Html.Encode(mark)}\">", StringComparison.Ordinal);
}
