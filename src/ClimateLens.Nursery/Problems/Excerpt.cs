using System.Globalization;
using System.Text;

namespace ClimateLens.Nursery.Problems;

/// <summary>Makes text from a user's file fit to print: no control or direction characters, and short.</summary>
public static class Excerpt
{
    private const int Longest = 60;

    /// <summary>The text with every control, direction or unpaired character shown as a box, cut after 60 characters.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder result = new();
        int count = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (count++ == Longest)
            {
                return result.Append('…').ToString();
            }

            result.Append(IsPlain(rune) ? rune.ToString() : "□");
        }

        return result.ToString();
    }

    /// <summary>Whether a text holds a control, direction or unpaired character.</summary>
    public static bool HasHidden(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.EnumerateRunes().Any(rune => !IsPlain(rune));
    }

    /// <summary>The <see cref="Of"/> text in double quotes.</summary>
    public static string Quoted(string text) => $"\"{Of(text)}\"";

    private static bool IsPlain(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune) is not
        (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse
        or UnicodeCategory.OtherNotAssigned or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
