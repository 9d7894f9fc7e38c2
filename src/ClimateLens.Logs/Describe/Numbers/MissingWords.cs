using System.Collections.Frozen;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Texts that programs and people write where there is no value.</summary>
internal static class MissingWords
{
    private static readonly FrozenSet<string> Words = new[]
    {
        "na", "n/a", "#n/a", "#na", "nan", "#nan", "-nan", "1.#qnan", "-1.#ind", "1.#inf", "null", "none", "nil", "(null)", "void", "inf", "-inf", "infinity", "+inf",
        "-", "--", "---", "----", "-----", "–", "—", "*", "**", "***", "****", "*****", "?", "??", "???", ".", "..", "...", "x", "xxx", "/", "//", "///", "_", "#", "####", "#####", "########",
        "#value!", "#ref!", "#div/0!", "#num!", "#name?", "#null!", "#wert!", "#waarde!", "#valeur!", "#valor!", "#valore!", "#bezug!", "#nv", "#n/b", "#i/t", "#værdi!",
        "err", "error", "err.", "fault", "fail", "failed", "invalid", "inv", "bad", "missing", "no data", "nodata", "no value", "offline", "off-line", "defect", "break", "broken", "open circuit", "short circuit", "overflow", "ovfl", "over range", "under range", "ol", "ovr", "disconnected", "timeout", "lost", "unknown", "undefined", "not available", "not measured",
        "fehlt", "fehler", "keine", "kein wert", "keine daten", "ungültig", "ungueltig", "k.a.", "k. a.", "entf.", "defekt", "störung", "stoerung",
        "geen", "geen waarde", "geen data", "fout", "ongeldig", "storing", "nvt", "n.v.t.", "ontbreekt", "onbekend",
        "fejl", "mangler", "ingen", "ingen data", "ugyldig", "ukendt",
        "erreur", "défaut", "defaut", "manquant", "absent", "nd", "n.d.", "n/d", "s/d", "s.d.", "pas de données", "invalide", "inconnu",
        "fallo", "sin dato", "sin datos", "falta", "inválido", "invalido", "avería", "averia", "desconocido",
        "errore", "guasto", "mancante", "non disponibile", "assente", "non valido", "sconosciuto",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a trimmed text says that there is no value.</summary>
    public static bool Contains(string text) => Words.Contains(text) || IsErrorCode(text);

    /// <summary>Error codes: Err7, E04, Error 12, Fehler 3.</summary>
    private static bool IsErrorCode(string text)
    {
        string word = text.AsSpan().TrimEnd("0123456789").TrimEnd(" :-_.#").ToString().ToLowerInvariant();
        return word.Length < text.Length && text.Length <= 16 && word is "err" or "error" or "e" or "fehler" or "fout" or "fejl" or "erreur" or "errore" or "fault" or "alarm";
    }
}
