using System.Text;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Markup;
using ClimateLens.Science.Pots;

namespace ClimateLens.Reports.Sheets;

/// <summary>Paper for pot checks, as one HTML file that needs nothing else: a sheet for a day's rounds, or two sheets for a side-by-side round.</summary>
/// <remarks>The signs of the levels stand on every sheet, so that all grade by the same ones: <see cref="MoistureScale"/>. The text fits the paper that is named in its style.</remarks>
public static class CheckSheet
{
    /// <summary>Fewest and most pots of a side-by-side round.</summary>
    public const int FewestPairs = 8, MostPairs = 60;

    private const int PotsABench = 8, RowsADay = 24, RowsAPage = 30;

    /// <summary>A day's sheet.</summary>
    /// <param name="house">The house whose benches and rounds are printed; null for blank ones.</param>
    /// <param name="paper">Paper.</param>
    public static byte[] ForADay(HouseSettings? house, PaperFormat paper)
    {
        PotRules rules = house?.Pots ?? new PotRules();
        HtmlBuilder body = new();
        Head(body, house, Phrase.Of("Pot checks of one day"), Phrase.Of("Date: ______________"));
        Scale(body);
        body.Line($"<table class=\"rows\"><thead><tr><th rowspan=\"2\">Bench</th><th rowspan=\"2\">Pot</th>");
        foreach (PotRound round in rules.Rounds)
        {
            body.Line($"<th colspan=\"3\">{Phrase.Of(round.Name)}<br>time ____ initials ____</th>");
        }

        body.Line($"</tr><tr>");
        foreach (PotRound _ in rules.Rounds)
        {
            body.Line($"<th>Level</th><th>Leaves</th><th>Weight</th>");
        }

        body.Line($"</tr></thead><tbody>");
        foreach ((string bench, string pot) in DayRows(house))
        {
            body.Add($"<tr><td>{bench}</td><td>{pot}</td>");
            for (int cell = 0; cell < 3 * rules.Rounds.Length; cell++)
            {
                body.Add($"<td></td>");
            }

            body.Line($"</tr>");
        }

        body.Line($"</tbody></table><p>Leaves: T turgid, F flagging, S severe flagging, W wilted. Halves are allowed: 2.5. Lift the pot; look at three sides. Note the medium's temperature and anything odd on the back.</p>");
        return Page(Phrase.Of("Pot checks"), paper, [body.ToHtml()]);
    }

    /// <summary>Two sheets for a side-by-side round, one a person, so that nobody sees the other's grades.</summary>
    /// <param name="house">The house, or null.</param>
    /// <param name="pots">Number of pots, <see cref="FewestPairs"/> to <see cref="MostPairs"/>.</param>
    /// <param name="paper">Paper.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of pots is impossible.</exception>
    public static byte[] SideBySide(HouseSettings? house, int pots, PaperFormat paper)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pots, FewestPairs);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pots, MostPairs);
        return Page(Phrase.Of("Side-by-side round"), paper, [.. Sheets(house, pots, Phrase.Of("first")), .. Sheets(house, pots, Phrase.Of("second"))]);
    }

    private static IEnumerable<Html> Sheets(HouseSettings? house, int pots, string person)
    {
        for (int first = 1; first <= pots; first += RowsAPage)
        {
            HtmlBuilder body = new();
            Head(body, house, Phrase.Of($"Side-by-side round, {person} person"), Phrase.Of("Date: ______________ Start: ________ Initials: ________"));
            body.Line($"<p>Choose the {pots} pots together, as many dry as wet, and number them. Then each grades all of them within the hour, without looking at the other's sheet.</p>");
            Scale(body);
            body.Line($"<table class=\"rows\"><thead><tr><th>No.</th><th>Bench</th><th>Pot</th><th>Level</th><th>Leaves</th><th>Weight</th></tr></thead><tbody>");
            for (int pot = first; pot <= Math.Min(pots, first + RowsAPage - 1); pot++)
            {
                body.Line($"<tr><td>{pot}</td><td></td><td></td><td></td><td></td><td></td></tr>");
            }

            body.Line($"</tbody></table>");
            yield return body.ToHtml();
        }
    }

    private static IEnumerable<(string Bench, string Pot)> DayRows(HouseSettings? house)
    {
        string[] benches = house is null ? [] : [.. house.Benches];
        int each = benches.Length == 0 ? 0 : Math.Clamp(RowsADay / benches.Length, 1, PotsABench);
        (string, string)[] named = [.. benches.SelectMany(bench => Enumerable.Range(1, each).Select(_ => (bench, "")))];
        return named.Length > 0 ? named : Enumerable.Repeat(("", ""), RowsADay);
    }

    private static void Head(HtmlBuilder body, HouseSettings? house, string title, string blanks)
        => body.Line($"<h1>{title}</h1><p class=\"blanks\">House: {(house is null ? "______________" : house.Name)} {blanks}</p>");

    private static void Scale(HtmlBuilder body)
    {
        body.Line($"<table class=\"scale\"><tbody>");
        for (int level = MoistureScale.Names.Length; level >= 1; level--)
        {
            body.Line($"<tr><th>{level}</th><th>{Phrase.Of(MoistureScale.Names[level - 1])}</th><td>{Phrase.Of(MoistureScale.Signs[level - 1])}</td></tr>");
        }

        body.Line($"</tbody></table>");
    }

    private const string Style = """
        @page { size: SIZE; margin: 12mm; }
        body { font: 10pt/1.3 system-ui, sans-serif; color: #000; margin: 0 auto; max-width: 186mm; } h1 { font-size: 14pt; margin: 0; } p { margin: 1.5mm 0; } .sheet { break-after: page; } .sheet:last-child { break-after: auto; }
        table { border-collapse: collapse; width: 100%; } .scale th, .scale td { text-align: left; vertical-align: top; font-size: 8.5pt; padding: .3mm 2mm .3mm 0; } .scale th { white-space: nowrap; }
        .rows { margin-top: 2mm; } .rows th, .rows td { border: .25mm solid #000; padding: .4mm 1mm; font-size: 8.5pt; } .rows td { height: 6mm; } thead { display: table-header-group; } tr { break-inside: avoid; }
        """;

    private static byte[] Page(string title, PaperFormat paper, IReadOnlyList<Html> sheets)
    {
        string size = paper == PaperFormat.Letter ? "letter" : "A4";
        HtmlBuilder page = new();
        page.Line($"<!DOCTYPE html><html lang=\"{Language.Current.Code}\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>{title}</title>");
        page.Line($"<style>{new Html(Style.Replace("SIZE", size, StringComparison.Ordinal))}</style></head><body>");
        foreach (Html sheet in sheets)
        {
            page.Line($"<main class=\"sheet\">{sheet}</main>");
        }

        page.Line($"</body></html>");
        return Encoding.UTF8.GetBytes(page.ToHtml().ToString());
    }
}
