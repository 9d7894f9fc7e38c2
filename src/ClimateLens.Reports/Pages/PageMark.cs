using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Reports.Pages;

/// <summary>A mark near the top of a page that says what it was made from.</summary>
internal static class PageMark
{
    public const string Name = "climatelens-input";

    /// <summary>Longest part of a page that must be read to find its mark. [bytes]</summary>
    public const int WithinBytes = 512;

    public static string Of(string inputHash, UnitSystem units) => $"{inputHash} {(units == UnitSystem.Us ? "us" : "metric")}";

    /// <summary>The mark of a notebook's page; its links to the other notebooks count.</summary>
    public static string Of(string inputHash, UnitSystem units, Notebook notebook, IEnumerable<Notebook> all)
        => $"{Of(inputHash, units)} {Fingerprint(notebook, all)}";

    private static string Fingerprint(Notebook notebook, IEnumerable<Notebook> all)
        => Digest.OfText($"{notebook.Hash}\n{string.Join('\n', all.Select(n => $"{n.Name} {n.Title}"))}")[..16];

    /// <summary>Whether the start of a page bears the mark.</summary>
    public static bool Bears(string startOfPage, string mark)
        => startOfPage.Contains($"<meta name=\"{Name}\" content=\"{Markup.Html.Encode(mark)}\">", StringComparison.Ordinal);
}
