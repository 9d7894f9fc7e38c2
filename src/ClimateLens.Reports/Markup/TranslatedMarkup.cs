using System.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Markup;

/// <summary>Writes an interpolated string of markup with its messages in the language of the moment.</summary>
internal static class TranslatedMarkup
{
    /// <summary>Appends the string.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="parts">Literal parts, and holes that are HTML already.</param>
    public static void Append(StringBuilder text, List<(bool IsHole, string Text)> parts)
    {
        string[] holes = [.. parts.Where(p => p.IsHole).Select(p => p.Text)];
        MarkupTexts texts = new(
            markup => text.Append(markup),
            (message, within) => text.Append(Phrase.Fill(Language.Current.Translate(message), [.. within.Select(h => holes[h])])),
            hole => text.Append(holes[hole]));
        foreach ((bool isHole, string part) in parts)
        {
            if (isHole)
            {
                texts.Hole();
            }
            else
            {
                texts.Literal(part);
            }
        }

        texts.End();
    }
}
