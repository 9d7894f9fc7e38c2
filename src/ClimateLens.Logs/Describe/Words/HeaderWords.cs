using System.Text;

namespace ClimateLens.Logs.Describe.Words;

/// <summary>Headers in the form in which their words are compared.</summary>
internal static class HeaderWords
{
    // Letters of U+00C0 to U+00FF without their accents: without culture data, the framework's own folding knows ASCII only.
    private const string WithoutAccents = "AAAAAAACEEEEIIIIDNOOOOO OUUUUYPsaaaaaaaceeeeiiiidnooooo ouuuuypy";

    /// <summary>
    /// Lower case, without accents, words apart by one blank: "Außentemp.1" is "aussentemp 1" and "airTemp_C" is "air temp c".
    /// CO2 stays one word.
    /// </summary>
    public static string Of(string header)
    {
        var text = new StringBuilder();
        char before = ' ';
        foreach (Rune rune in Plain(header).EnumerateRunes())
        {
            char c = rune.IsBmp ? (char)rune.Value : ' ';
            bool joined = Rune.IsLetterOrDigit(rune);
            bool apart = joined && char.IsLetterOrDigit(before)
                && (char.IsDigit(c) != char.IsDigit(before) || (char.IsUpper(c) && char.IsLower(before)));
            if ((!joined || apart) && text.Length > 0 && text[^1] != ' ')
            {
                text.Append(' ');
            }

            if (joined)
            {
                text.Append(char.ToLowerInvariant(c));
            }

            before = c;
        }

        return $" {text.ToString().TrimEnd()} ".Replace(" co 2 ", " co2 ", StringComparison.Ordinal);
    }

    private static string Plain(string header)
    {
        var text = new StringBuilder();
        foreach (char c in header)
        {
            _ = c switch
            {
                'ß' => text.Append("ss"),
                'æ' => text.Append("ae"),
                'Æ' => text.Append("Ae"),
                'œ' => text.Append("oe"),
                '₂' => text.Append('2'),
                >= '\u0300' and <= '\u036F' => text,
                >= '\u00C0' and <= '\u00FF' => text.Append(WithoutAccents[c - '\u00C0']),
                _ => text.Append(c),
            };
        }

        return text.ToString();
    }
}
