using System.Text;

namespace ClimateLens.Nursery.Channels;

/// <summary>How people write units: the same unit has many spellings, and one key.</summary>
public static class UnitText
{
    /// <summary>
    /// The key of a unit as written: without blanks and ^, in lower case, raised digits lowered, either micro sign and either degree
    /// sign (and what keyboards have in its place) as one, a point for every sign of multiplication.
    /// </summary>
    public static string Key(string code)
    {
        var key = new StringBuilder(code.Length);
        foreach (Rune rune in code.EnumerateRunes())
        {
            key.Append(rune.Value switch
            {
                '^' or '\u200B' or '\uFEFF' => "",
                '\u00B5' or '\u03BC' => "u",
                '\u00BA' or '\u02DA' => "°",
                '\u2103' => "°c",
                '\u2109' => "°f",
                '\u00B9' => "1",
                '\u00B2' => "2",
                '\u00B3' => "3",
                '\u207B' or '\u2212' => "-",
                '\u00B7' or '\u22C5' or '\u00D7' or '*' => ".",
                _ => Rune.IsWhiteSpace(rune) ? "" : Rune.ToLowerInvariant(rune).ToString(),
            });
        }

        return key.ToString();
    }
}
