using System.Collections.Immutable;

namespace ClimateLens.Science.Treatments;

/// <summary>Counts of resistance groups in a sequence of treatments. It counts codes and knows nothing of what to use.</summary>
/// <remarks>
/// <b>Rule:</b> a treatment's codes are parted at "+", "/", "," or "&amp;"; case and blanks do not count, and a bare number loses leading noughts. Two treatments follow each other with one group where any code is in both.
/// <b>Source:</b> the rule to alternate groups and to limit each one in a season [PNW]; the counting is this project's.
/// </remarks>
public static class GroupRuns
{
    /// <summary>The codes of one treatment, in ordinal order.</summary>
    /// <param name="written">As written, for example <c>9 + 12</c>; empty gives none.</param>
    public static ImmutableSortedSet<string> CodesOf(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        return written
            .Split(['+', '/', ',', '&'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(Plain)
            .ToImmutableSortedSet(StringComparer.Ordinal);
    }

    /// <summary>Most treatments in a row that share one code; 0 for none.</summary>
    /// <param name="treatments">The codes of each treatment, in order of time.</param>
    public static int Longest(IReadOnlyList<ImmutableSortedSet<string>> treatments)
    {
        ArgumentNullException.ThrowIfNull(treatments);
        Dictionary<string, int> running = [];
        int longest = 0;
        foreach (ImmutableSortedSet<string> codes in treatments)
        {
            running = codes.ToDictionary(code => code, code => running.GetValueOrDefault(code) + 1, StringComparer.Ordinal);
            longest = Math.Max(longest, running.Values.DefaultIfEmpty(0).Max());
        }

        return longest;
    }

    private static string Plain(string code)
    {
        string joined = string.Concat(code.Where(c => !char.IsWhiteSpace(c))).ToUpperInvariant();
        string digits = joined.TrimStart('0');
        return joined.All(char.IsAsciiDigit) && digits.Length > 0 ? digits : joined;
    }
}
