using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Finds which house a header, a title or a file's name speaks of: "House 2", "Kas 1", "Celle 5", "Abt. B".</summary>
internal static class HouseTags
{
    private static readonly HashSet<string> Houses = ["kas", "gewachshaus", "gewaechshaus", "gwh", "drivhus", "vaeksthus", "serre", "invernadero", "serra", "greenhouse", "glasshouse", "gh"];

    /// <summary>The house that a key of a long table names: by a word for it, or because its column is called so; null for none.</summary>
    /// <param name="key">Header of the column.</param>
    /// <param name="text">Its text in some rows.</param>
    public static string? OfKey(HeaderText key, string text)
        => Of(HeaderText.Of(text)) ?? (key.HasAny(Idea.House) || key.Words.Any(w => w.Idea == Idea.Inside && Houses.Contains(w.Word)) ? Of(HeaderText.Of($"house {text}")) ?? (SensorNames.Id(text) is { Length: > 0 } id ? id : null) : null);

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

        return Prefixed(header);
    }

    /// <summary>"H1 Temp" is of house 1; "H1" alone may be a humidity.</summary>
    private static string? Prefixed(HeaderText header)
    {
        string[] words = header.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is ["h", { Length: <= 2 } number, _, ..] && number.All(char.IsAsciiDigit) && number != "0" && header.Words.Any(w => w.Idea is Idea.Temperature or Idea.Humidity or Idea.CarbonDioxide or Idea.Vent or Idea.Screen or Idea.Pipe) ? number.TrimStart('0') : null;
    }
}
