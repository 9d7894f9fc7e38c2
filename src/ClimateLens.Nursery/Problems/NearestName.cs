namespace ClimateLens.Nursery.Problems;

/// <summary>Finds the known name that someone most likely meant.</summary>
public static class NearestName
{
    private const int ShortestPart = 4;

    /// <summary>
    /// The known name nearest to what was written, or null when none is near: no slip in names of up to two letters, one
    /// up to four, two up to seven, three beyond (insertions, losses, swaps of neighbours; case does not count); failing
    /// that, the only known name that holds the written one, or the other way round.
    /// </summary>
    public static string? Of(string written, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(written);
        string[] names = [.. known];
        string lower = written.ToLowerInvariant();
        (string Name, int Slips)[] near = [.. names
            .Where(name => Math.Abs(name.Length - written.Length) <= SlipsAllowed(name.Length))
            .Select(name => (name, Slips(lower, name.ToLowerInvariant())))
            .Where(pair => pair.Item2 <= SlipsAllowed(Math.Min(written.Length, pair.name.Length)))
            .OrderBy(pair => pair.Item2)];
        if (near.Length > 0)
        {
            return near[0].Name;
        }

        IReadOnlyList<string> parts = Holding(written, names);
        return parts.Count == 1 ? parts[0] : null;
    }

    /// <summary>All known names that hold the written one, or that it holds, from four letters on.</summary>
    public static IReadOnlyList<string> Holding(string written, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(written);
        string lower = written.ToLowerInvariant();
        return [.. known.Where(name => IsPartOf(name, lower))];
    }

    /// <summary>"did you mean …?" for a near name, else the fallback.</summary>
    public static string Mend(string written, IEnumerable<string> known, string otherwise)
        => Of(written, known) is { } name ? $"did you mean \"{name}\"?" : otherwise;

    private static int SlipsAllowed(int length) => length <= 2 ? 0 : length <= 4 ? 1 : length <= 7 ? 2 : 3;

    private static bool IsPartOf(string name, string lower)
    {
        string known = name.ToLowerInvariant();
        return (lower.Length >= ShortestPart && known.Contains(lower, StringComparison.Ordinal))
            || (known.Length >= ShortestPart && lower.Contains(known, StringComparison.Ordinal));
    }

    /// <summary>Optimal string alignment distance: Levenshtein's with swaps of neighbours.</summary>
    private static int Slips(string a, string b)
    {
        int[,] cost = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            cost[i, 0] = i;
        }

        for (int j = 0; j <= b.Length; j++)
        {
            cost[0, j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int change = a[i - 1] == b[j - 1] ? 0 : 1;
                int best = Math.Min(Math.Min(cost[i - 1, j] + 1, cost[i, j - 1] + 1), cost[i - 1, j - 1] + change);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                cost[i, j] = swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
            }
        }

        return cost[a.Length, b.Length];
    }
}
