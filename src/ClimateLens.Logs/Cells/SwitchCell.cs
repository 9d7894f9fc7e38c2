using System.Collections.Frozen;
using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>
/// Reads on and off as words of seven languages, in any case, with or without accents. Open means that water or air can pass, as of
/// a valve or a vent; of an electrical contact that would be off, so such a column has to be given as numbers.
/// </summary>
internal static class SwitchCell
{
    private const int LongestWord = 32;

    private static readonly FrozenDictionary<string, double> Words = On().Select(word => (word, 1.0)).Concat(Off().Select(word => (word, 0.0)))
        .DistinctBy(pair => pair).ToFrozenDictionary(pair => pair.word, pair => pair.Item2, StringComparer.Ordinal);

    /// <summary>Reads a word.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, out double value)
    {
        value = 0;
        return cell.Length is > 0 and <= LongestWord && Words.TryGetValue(CellText.Folded(Encoding.UTF8.GetString(cell)), out value);
    }

    /// <summary>Words for on, folded; docs/nursery-file.md lists them.</summary>
    internal static IEnumerable<string> On() =>
    [
        "on", "true", "yes", "t", "y", "open", "opened", "running", "active", "enabled", "started",
        "aan", "ja", "j", "waar", "geopend", "actief",
        "ein", "an", "auf", "offen", "geoffnet", "wahr", "aktiv", "eingeschaltet",
        "til", "taendt", "aben", "abent", "sand",
        "marche", "en marche", "oui", "ouvert", "ouverte", "allume", "allumee", "vrai", "actif", "active",
        "si", "abierto", "abierta", "encendido", "encendida", "verdadero", "activo", "activa", "activado", "marcha", "en marcha",
        "acceso", "accesa", "aperto", "aperta", "vero", "attivo", "attiva", "marcia", "in marcia",
    ];

    /// <summary>Words for off, folded.</summary>
    internal static IEnumerable<string> Off() =>
    [
        "off", "false", "no", "f", "n", "closed", "close", "shut", "stopped", "inactive", "disabled",
        "uit", "nee", "neen", "dicht", "gesloten", "onwaar", "inactief",
        "aus", "nein", "zu", "geschlossen", "falsch", "inaktiv", "ausgeschaltet",
        "fra", "slukket", "nej", "lukket", "falsk",
        "arret", "a l'arret", "non", "ferme", "fermee", "eteint", "eteinte", "faux", "inactif", "inactive",
        "cerrado", "cerrada", "apagado", "apagada", "falso", "inactivo", "inactiva", "desactivado", "paro", "parado",
        "spento", "spenta", "chiuso", "chiusa", "falso", "inattivo", "inattiva", "fermo", "ferma", "arresto",
    ];
}
