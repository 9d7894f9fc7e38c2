using System.Collections.Frozen;
using System.Text;
using System.Text.RegularExpressions;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Texts by which programs and people say "no value" where a number belongs: they cannot be numbers, so no nursery file has to name
/// them. In seven languages, in any case, with or without accents and brackets. The import counts them by text;
/// docs/nursery-file.md lists them. A text that is not here is kept aside as a cell that was not read.
/// </summary>
internal static partial class MissingWords
{
    private const int LongestWord = 48;

    // Marks that fill a field: ---, ***, #####, --.-, ?, //.
    private const string Fillers = "-\u2013\u2014\u2212*#?_~/\\.,:";

    private static readonly FrozenSet<string> Words = All().ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a trimmed cell says "no value".</summary>
    public static bool Contains(ReadOnlySpan<byte> cell)
    {
        if (cell.Length is 0 or > LongestWord)
        {
            return false;
        }

        string text = CellText.Folded(Encoding.UTF8.GetString(cell));
        return text.Length > 0 && (text.All(c => c == ' ' || Fillers.Contains(c, StringComparison.Ordinal)) || IsWord(text));
    }

    /// <summary>Whether a trimmed text says "no value".</summary>
    public static bool Contains(string text) => text.Length <= LongestWord && Contains(Encoding.UTF8.GetBytes(text));

    private static bool IsWord(string text)
    {
        string bare = text.Trim('<', '>', '(', ')', '[', ']', '{', '}', '"', '\'', ' ');
        return Words.Contains(bare) || Numbered().IsMatch(bare) || Spreadsheet().IsMatch(bare) || NoNumber().IsMatch(bare);
    }

    /// <summary>The words, folded.</summary>
    internal static IEnumerable<string> All() =>
    [
        "na", "n/a", "n.a.", "n.a", "n/d", "n.d.", "n.d", "nd", "s/d", "i/t", "nan", "null", "nul", "nil", "none", "\\n", "undefined", "undef",
        "missing", "miss", "empty", "blank", "void", "unknown", "invalid", "bad", "bad data", "bad value", "fault", "fail", "failed", "failure",
        "error", "err", "no data", "nodata", "no value", "no reading", "not available", "unavailable", "not connected", "disconnected", "offline",
        "off line", "timeout", "time out", "no signal", "no sensor", "broken", "defect", "over", "under", "overflow", "underflow", "overrange",
        "over range", "underrange", "under range", "out of range", "ol", "oor", "open circuit", "short circuit", "not a number",
        "k.a.", "k. a.", "keine angabe", "keine daten", "kein wert", "kein signal", "fehlt", "fehler", "fehlend", "ungultig", "unbekannt", "leer",
        "n.v.", "nicht verfugbar", "storung", "gestort", "ausfall", "defekt", "fuhlerbruch", "drahtbruch", "kurzschluss",
        "nvt", "n.v.t.", "n.b.", "geen", "geen data", "geen waarde", "geen meting", "geen signaal", "fout", "storing", "ongeldig", "onbekend",
        "leeg", "niet beschikbaar", "ontbreekt", "draadbreuk", "kortsluiting",
        "ingen", "ingen data", "ingen vaerdi", "ingen maling", "mangler", "fejl", "ugyldig", "ukendt", "tom", "ikke tilgaengelig", "afbrudt", "udfald",
        "non disponible", "indisponible", "pas de donnees", "aucune", "aucune donnee", "manquant", "manquante", "erreur", "defaut", "invalide",
        "inconnu", "vide", "panne", "absent", "hors ligne",
        "sin dato", "sin datos", "sin valor", "sin senal", "no disponible", "no hay datos", "falta", "faltante", "fallo", "averia", "invalido",
        "desconocido", "vacio", "nulo", "ninguno",
        "non disponibile", "nessun dato", "nessun valore", "mancante", "manca", "errore", "guasto", "non valido", "sconosciuto", "vuoto", "nullo", "assente",
    ];

    // Err7, E01, Error 12, Fehler 3: the number names the error.
    [GeneratedRegex(@"^(e|er|err|error|fault|alarm|fehler|fout|fejl|erreur|errore|defaut)[ .:_#-]*[0-9]{1,4}$", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();

    // #N/A, #WERT!, #DIV/0!, #¡VALOR!: what spreadsheets write for errors begins so in every language.
    [GeneratedRegex(@"^#[^0-9]*(/0[!?]?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Spreadsheet();

    // What C libraries print for no number and for infinity.
    [GeneratedRegex(@"^[+-]?(nan(\([^)]*\)?)?|nanq|nans|inf|infinity|\u221E|1[.,]#[a-z]+0*)$", RegexOptions.CultureInvariant)]
    private static partial Regex NoNumber();
}
