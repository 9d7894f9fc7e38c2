using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Data;
using ClimateLens.Reports.Markup;

namespace ClimateLens.Reports.Cells;

/// <summary>What the page was made from: enough to make it again.</summary>
public sealed class ProvenanceCell : IReportCell
{
    /// <inheritdoc/>
    public string Name => "provenance";

    /// <inheritdoc/>
    public string Heading => Phrase.Of("What was this page made from?");

    /// <inheritdoc/>
    public CellBasis Basis { get; } = new() { Files = [DataFiles.Review, DataFiles.Files] };

    /// <inheritdoc/>
    public CellContent Render(CellContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        Provenance p = context.Review.Provenance;
        HtmlBuilder body = new();
        Files(body, p);
        body.Line($"<dl class=\"pairs small\">");
        Pair(body, Phrase.Of("Made by"), p.Tool);
        Pair(body, Phrase.Of("Nursery file"), Phrase.Of($"{p.NurseryFile}, SHA-256 {p.NurseryFileSha256}"));
        Pair(body, Phrase.Of("Seed and draws of sensor error"), Phrase.Of($"{p.Seed}, {p.Draws} draws"));
        Pair(body, Phrase.Of("Time-zone data"), Phrase.Of($"{p.TimeZoneData}, zone {context.Review.Period.TimeZone}"));
        Pair(body, Phrase.Of("Hash of all that was looked at"), p.InputHash);
        body.Line($"</dl>");
        return new CellContent(Sentence(p), body.ToHtml());
    }

    private static string Sentence(Provenance p)
    {
        if (p.Files.IsEmpty)
        {
            return Phrase.Of("No file holds readings of this period.");
        }

        int aside = p.Files.Sum(f => f.SetAside);
        int cells = p.Files.Sum(f => f.CellsNotRead);
        string rows = aside == 0 ? Phrase.Of("no row of them was set aside") : Phrase.Of($"{Words.Count(aside, "row", "rows")} of them could not be read and {(aside == 1 ? Phrase.Of("was") : Phrase.Of("were"))} set aside");
        string single = cells == 0 ? "" : Phrase.Of($"; {Words.Count(cells, "single value", "single values")} could not be read");
        return Phrase.Of($"The readings come from {Words.Count(p.Files.Length, "file", "files")}; {rows}{single}. Equal input gives this page again, byte for byte.");
    }

    private static void Files(HtmlBuilder body, Provenance p)
    {
        if (p.Files.IsEmpty)
        {
            return;
        }

        body.Line($"<div class=\"scroll\" role=\"region\" aria-label=\"Files, scrolls sideways\" tabindex=\"0\"><table class=\"data\"><caption>Files, counted in rows</caption><thead><tr><th scope=\"col\">File</th><th scope=\"col\">Export</th><th scope=\"col\">Read</th><th scope=\"col\">Accepted</th><th scope=\"col\">Set aside</th><th scope=\"col\">Repeated</th><th scope=\"col\">Blank</th><th scope=\"col\">Conflicts</th><th scope=\"col\">Values not read</th><th scope=\"col\">SHA-256</th></tr></thead><tbody>");
        foreach (SourceFile f in p.Files)
        {
            body.Line($"<tr><th scope=\"row\">{Html.Name(f.File)}</th><td>{Html.Name(f.Source)}</td><td>{f.RowsRead}</td><td>{f.Accepted}</td><td>{f.SetAside}</td><td>{f.Duplicates}</td><td>{f.Blank}</td><td>{f.Conflicts}</td><td>{f.CellsNotRead}</td><td><code title=\"{f.Sha256}\">{Short(f.Sha256)}</code></td></tr>");
        }

        body.Line($"</tbody></table></div>");
    }

    private static string Short(string hash) => hash.Length > 12 ? hash[..12] + "…" : hash;

    private static void Pair(HtmlBuilder body, string name, string value)
        => body.Line($"<div><dt>{name}</dt><dd>{value}</dd></div>");
}
