using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Finds which house a header, a title or a file's name speaks of: "House 2", "Kas 1", "Celle 5", "Abt. B".</summary>
internal static class HouseTags
{
    private static readonly HashSet<string> Houses = ["kas", "gewachshaus", "gewaechshaus", "gwh", "drivhus", "vaeksthus", "serre", "invernadero", "serra", "greenhouse", "glasshouse", "gh"];

    /// <summary>The number or letter behind a word for a house; null when there is none.</summary>
    public static string? Of(HeaderText header)
    {
        foreach (FoundWord word in header.Words)
        {
            if (word.Idea != Idea.House && !(word.Idea == Idea.Inside && Houses.Contains(word.Word)))
            {
                continue;
            }

            string rest = header.Text[(word.At + word.Word.Length)..].TrimStart();
            string next = rest.Split(' ', 2)[0];
            if (next.Length is >= 1 and <= 3 && next.All(char.IsAsciiDigit))
            {
                return next.TrimStart('0') is { Length: > 0 } number ? number : "0";
            }

            if (next.Length == 1 && char.IsAsciiLetter(next[0]) && word.Idea == Idea.House)
            {
                return next.ToUpperInvariant();
            }
        }

        return null;
    }
}
