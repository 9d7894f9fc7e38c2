using System.Collections.Frozen;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Words for on and off.</summary>
internal static class SwitchWords
{
    private static readonly FrozenSet<string> Words = new[]
    {
        "on", "off", "true", "false", "yes", "no", "open", "closed", "run", "stop", "aan", "uit", "ja", "nee", "dicht", "waar", "onwaar",
        "ein", "an", "aus", "nein", "auf", "zu", "offen", "geschlossen", "wahr", "falsch", "til", "fra", "nej", "abent", "lukket", "åben", "sand", "falsk",
        "marche", "arrêt", "arret", "oui", "non", "ouvert", "fermé", "ferme", "vrai", "faux", "si", "sí", "sì", "abierto", "cerrado", "encendido", "apagado", "verdadero", "falso",
        "acceso", "spento", "aperto", "chiuso", "vero",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a column holds such words and nothing else.</summary>
    public static bool All(NumberTally tally) => tally.Words > 0 && !tally.ManyTexts && tally.Texts.Keys.All(t => Words.Contains(t) || MissingWords.Contains(t)) && tally.Texts.Keys.Any(Words.Contains);
}
