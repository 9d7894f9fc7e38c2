using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Names the sensors of columns that share a channel, by what their headers do not share.</summary>
internal static class SensorNames
{
    private const int LongestName = 40;

    /// <summary>The findings of one export with names where a channel has several.</summary>
    public static ImmutableArray<ColumnFinding> Give(IReadOnlyList<ColumnFinding> findings)
    {
        ColumnFinding[] named = [.. findings];
        foreach (var group in named.Index().Where(f => !f.Item.Channel.IsUnused).GroupBy(f => f.Item.Channel.Channels[0]).Where(g => g.Count() > 1))
        {
            int[] members = [.. group.Select(f => f.Index)];
            string[] names = Distinct([.. members.Select(i => named[i])]);
            for (int k = 0; k < members.Length; k++)
            {
                named[members[k]] = named[members[k]] with { Sensor = names[k] };
            }
        }

        return [.. named];
    }

    private static string[] Distinct(ColumnFinding[] findings)
    {
        IEnumerable<string>[] ways =
        [
            .. Enumerable.Range(0, findings.Min(f => f.Where.Length)).Select(k => findings.Select(f => Id(f.Where[k].Text))),
            findings.Select(f => f.Where.IsEmpty ? f.Channel.Sensor : Id(string.Join('-', f.Where.Select(w => w.Text)))),
            Differing(findings),
            findings.Select(f => Id($"{f.Channel.Sensor} {Digits(f.Facts.Header.Name)}")),
            findings.Select(f => Id(f.Facts.Header.Name)),
        ];
        foreach (IEnumerable<string> way in ways)
        {
            string[] names = [.. way];
            if (names.All(n => n.Length > 0) && names.Distinct(StringComparer.OrdinalIgnoreCase).Count() == names.Length)
            {
                return names;
            }
        }

        return [.. findings.Select(f => string.Create(CultureInfo.InvariantCulture, $"column-{f.Facts.Column + 1}{(f.Where.IsEmpty ? "" : "-" + Id(string.Join('-', f.Where.Select(w => w.Text))))}"))];
    }

    /// <summary>The words of each header that the others do not have.</summary>
    private static IEnumerable<string> Differing(ColumnFinding[] findings)
    {
        string[][] words = [.. findings.Select(f => f.Facts.Header.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        string[] shared = [.. words.Aggregate((a, b) => [.. a.Intersect(b)])];
        return words.Select(w => Id(string.Join('-', w.Except(shared))));
    }

    private static string Digits(string name) => string.Concat(name.Where(char.IsAsciiDigit));

    /// <summary>Letters, digits, '-' and '_' of a text.</summary>
    public static string Id(string text)
    {
        var id = new StringBuilder();
        foreach (char c in Words.HeaderWords.Of(text).Trim().Replace(' ', '-'))
        {
            id.Append(char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : ' ');
        }

        string plain = id.ToString().Replace(" ", "", StringComparison.Ordinal).Trim('-');
        return plain.Length > LongestName ? plain[..LongestName] : plain;
    }
}
