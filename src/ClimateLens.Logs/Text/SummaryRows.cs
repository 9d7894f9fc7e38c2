using System.Collections.Frozen;
using System.Text;

namespace ClimateLens.Logs.Text;

/// <summary>Tells rows of totals and averages, which programs write below the readings, from rows that are broken.</summary>
internal static class SummaryRows
{
    private const int LongestWord = 40;

    // English, Dutch, German, Danish, French, Spanish, Italian.
    private static readonly FrozenSet<string> Words = new[]
    {
        "total", "totals", "sum", "average", "avg", "mean", "minimum", "maximum", "min", "max", "count",
        "totaal", "som", "gemiddelde", "gemiddeld", "gem", "aantal",
        "summe", "gesamt", "mittelwert", "mittel", "durchschnitt", "anzahl",
        "i alt", "sum i alt", "gennemsnit", "gns", "antal",
        "somme", "moyenne", "moy", "nombre",
        "suma", "promedio", "media", "mínimo", "máximo", "recuento",
        "totale", "somma", "minimo", "massimo", "conteggio",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether the first text of the row is such a word.</summary>
    public static bool IsOne(ExportTable table)
    {
        for (int i = 0; i < table.Fields; i++)
        {
            ReadOnlySpan<byte> field = Cells.CellText.Trim(table.Field(i));
            if (field.Length > 0)
            {
                return field.Length <= LongestWord && Words.Contains(Encoding.UTF8.GetString(field).TrimEnd(':', '.', ' '));
            }
        }

        return false;
    }
}
