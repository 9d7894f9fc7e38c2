using System.Text.RegularExpressions;

namespace ClimateLens.Logs.Describe.Words;

/// <summary>A header taken apart.</summary>
/// <param name="Raw">As it stands in the file, trimmed.</param>
/// <param name="Name">Without its unit.</param>
/// <param name="Unit">Its unit, or null.</param>
/// <param name="Words">Words of the trade in it.</param>
internal sealed partial record HeaderText(string Raw, string Name, UnitMeaning? Unit, IReadOnlyList<FoundWord> Words)
{
    private const int MostUnitParts = 3;

    /// <summary>The name as its words are compared, see <see cref="HeaderWords"/>.</summary>
    public string Text { get; private init; } = "";

    /// <summary>The name without any unit, as its words are compared: columns with the same say the same.</summary>
    public string Bare { get; private init; } = "";

    /// <summary>A second unit in the name that measures something else, or null.</summary>
    public UnitMeaning? OtherUnit { get; private init; }

    /// <summary>What the words speak of.</summary>
    public IReadOnlySet<Idea> Ideas { get; } = Words.Select(w => w.Idea).ToHashSet();

    /// <summary>Whether it speaks of all of these.</summary>
    public bool Has(params ReadOnlySpan<Idea> ideas)
    {
        foreach (Idea idea in ideas)
        {
            if (!Ideas.Contains(idea))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether it speaks of one of these.</summary>
    public bool HasAny(params ReadOnlySpan<Idea> ideas)
    {
        foreach (Idea idea in ideas)
        {
            if (Ideas.Contains(idea))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes a header apart.</summary>
    /// <param name="header">The name as in the file.</param>
    /// <param name="unitCell">The unit that stands in a row of its own, or empty.</param>
    /// <param name="group">What stands above the name, or empty.</param>
    public static HeaderText Of(string header, string unitCell = "", string group = "")
    {
        string raw = header.Trim();
        (string name, UnitMeaning? unit) = Split(raw);
        UnitMeaning? below = UnitWords.Of(unitCell.Trim().Trim('[', ']', '(', ')'));
        string whole = $"{group} {name}";
        (string bare, UnitMeaning? second) = unit is null ? (name, null) : Split(name);
        UnitMeaning? known = below ?? unit;
        UnitMeaning?[] others = below is null ? [second] : [unit, second];
        return new HeaderText(raw, name, known, WordFinder.Find(whole))
        {
            Text = HeaderWords.Of(whole),
            Bare = HeaderWords.Of($"{group} {bare}"),
            OtherUnit = Array.Find(others, other => known is not null && other is not null && AreOfDifferentThings(known, other)),
        };
    }

    private static bool AreOfDifferentThings(UnitMeaning one, UnitMeaning other)
        => one.Quantities.Count > 0 && other.Quantities.Count > 0 && !one.Quantities.Intersect(other.Quantities).Any();

    private static (string Name, UnitMeaning? Unit) Split(string header)
    {
        foreach (Match bracket in Bracketed().Matches(header))
        {
            if (UnitWords.Of(bracket.Groups[1].Value) is { } unit)
            {
                return ((header[..bracket.Index] + " " + header[(bracket.Index + bracket.Length)..]).Trim(), unit);
            }
        }

        return Behind(header, ",", ";", ":", " in ", " - ", "|") ?? LastWords(header) ?? Behind(header, "/") ?? (header, null);
    }

    /// <summary>A unit behind the last mark of a kind: "Temp., °C", "Temp / °C".</summary>
    private static (string Name, UnitMeaning? Unit)? Behind(string header, params ReadOnlySpan<string> marks)
    {
        foreach (string mark in marks)
        {
            int at = header.LastIndexOf(mark, StringComparison.OrdinalIgnoreCase);
            if (at > 0 && UnitWords.Of(header[(at + mark.Length)..]) is { } unit && IsPlain(header[(at + mark.Length)..].Trim(), header[..at]))
            {
                return (header[..at].Trim(), unit);
            }
        }

        return null;
    }

    /// <summary>A unit at the end: "Temp °C", "wind_spd_kmh", "TempF"; a single letter counts only behind a temperature.</summary>
    private static (string Name, UnitMeaning? Unit)? LastWords(string header)
    {
        MatchCollection parts = Parts().Matches(header);
        for (int count = Math.Min(MostUnitParts, parts.Count - 1); count >= 1; count--)
        {
            int at = parts[^count].Index;
            string text = header[at..].Replace('_', ' ').Trim();
            string name = header[..at].TrimEnd(' ', '_', '-', '.', ',', ':', '/');
            if (name.Length > 0 && UnitWords.Of(text) is { } unit && IsPlain(text, name))
            {
                return (name, unit);
            }
        }

        return null;
    }

    private static bool IsPlain(string text, string name)
    {
        if (text.Any(c => c is '%' or '/' or '°' or 'º' or '²' or 'µ' or 'μ'))
        {
            return true;
        }

        string lower = text.ToLowerInvariant();
        return lower switch
        {
            "c" or "f" => WordFinder.Find(name).Exists(w => w.Idea is Idea.Temperature or Idea.DewPoint or Idea.WetBulb or Idea.SetPoint),
            "ms" or "mm" or "kn" or "kt" => WordFinder.Find(name).Exists(w => w.Idea is Idea.Wind or Idea.Gust or Idea.Speed or Idea.Rain),
            "min" or "max" or "in" or "m" or "s" or "h" or "l" or "g" or "k" or "v" or "a" or "w" or "of" or "hr" or "gas" or "ec" or "ph" or "deg" or "bar" or "std" or "lit" => false,
            _ => true,
        };
    }

    [GeneratedRegex(@"[\(\[\{<]\s*([^\)\]\}>]{1,24}?)\s*[\)\]\}>]", RegexOptions.CultureInvariant)]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"[^\s_]+?(?=[CF]$|[\s_]|$)|[CF]$", RegexOptions.CultureInvariant)]
    private static partial Regex Parts();
}
