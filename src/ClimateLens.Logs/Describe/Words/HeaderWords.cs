using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Describe.Words;

/// <summary>Headers in the form in which their words are compared.</summary>
internal static class HeaderWords
{
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
        string spelt = header.Replace("ß", "ss", StringComparison.Ordinal).Replace("æ", "ae", StringComparison.Ordinal).Replace("Æ", "Ae", StringComparison.Ordinal)
            .Replace("ø", "o", StringComparison.Ordinal).Replace("Ø", "O", StringComparison.Ordinal).Replace("œ", "oe", StringComparison.Ordinal).Replace("₂", "2", StringComparison.Ordinal);
        var text = new StringBuilder();
        foreach (char c in spelt.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
            {
                text.Append(c);
            }
        }

        return text.ToString();
    }
}
