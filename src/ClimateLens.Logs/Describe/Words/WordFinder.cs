namespace ClimateLens.Logs.Describe.Words;

/// <summary>A word found in a header.</summary>
/// <param name="Idea">What it speaks of.</param>
/// <param name="Word">The word, without its stars.</param>
/// <param name="At">Where it stands in <see cref="HeaderWords.Of"/>.</param>
internal readonly record struct FoundWord(Idea Idea, string Word, int At);

/// <summary>Finds the words of <see cref="WordTable"/> in headers.</summary>
internal static class WordFinder
{
    private static readonly Entry[] Entries =
    [
        .. WordTable.All.SelectMany(row => row.Words.Split(' ').Select(word => Entry.Of(row.Idea, word))).OrderByDescending(e => e.Word.Length).ThenBy(e => e.Open),
    ];

    /// <summary>The words of a header in their order; the longest that fit, none inside another.</summary>
    public static List<FoundWord> Find(string header)
    {
        string text = HeaderWords.Of(header);
        bool[] taken = new bool[text.Length];
        var found = new List<FoundWord>();
        foreach (Entry entry in Entries)
        {
            for (int at = text.IndexOf(entry.Word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(entry.Word, at + 1, StringComparison.Ordinal))
            {
                int end = at + entry.Word.Length;
                bool twin = found.Exists(f => f.At == at && f.Word == entry.Word && f.Idea != entry.Idea);
                if (entry.Fits(text, at) && (twin || !taken.AsSpan(at, end - at).Contains(true)))
                {
                    taken.AsSpan(at, end - at).Fill(true);
                    found.Add(new FoundWord(entry.Idea, entry.Word, at));
                }
            }
        }

        found.Sort((a, b) => (a.At, a.Idea).CompareTo((b.At, b.Idea)));
        return found;
    }

    /// <summary>A word with where it may stand; the number of stars is in <see cref="Open"/>.</summary>
    private sealed record Entry(Idea Idea, string Word, bool OpenBefore, bool OpenAfter)
    {
        public int Open => (OpenBefore ? 1 : 0) + (OpenAfter ? 1 : 0);

        public static Entry Of(Idea idea, string word)
            => new(idea, word.Trim('*').Replace('_', ' '), word.StartsWith('*'), word.EndsWith('*'));

        public bool Fits(string text, int at)
            => (OpenBefore || text[at - 1] == ' ') && (OpenAfter || text[at + Word.Length] == ' ');
    }
}
