using System.Globalization;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>
/// Columns that claim one channel under one name: two sensors, if their values are of a kind; else a name stands over the wrong column, and the
/// user is asked about those whose values do not move as a measured value does, or about all.
/// </summary>
internal static class Namesakes
{
    // A measured value takes many values where a set point or a state has few.
    private static readonly HashSet<string> Places =
    [
        "top", "upper", "lower", "mid", "middle", "low", "left", "right", "north", "south", "east", "west", "centre", "center", "front", "back", "gable", "side", "row", "line", "main",
        "boven", "onder", "midden", "links", "rechts", "noord", "zuid", "oost", "voor", "achter", "oben", "unten", "mitte", "nord", "sud", "ost", "vorn", "hinten",
        "ovre", "nedre", "midt", "venstre", "hojre", "syd", "vest", "haut", "bas", "milieu", "gauche", "droite", "est", "ouest", "alto", "bajo", "centro", "norte", "sur", "este", "oeste", "basso", "sinistra", "destra", "ovest",
        "degc", "deg", "celsius", "the", "der", "van", "des", "del", "della", "los", "las",
    ];

    private const int FewValues = 10;
    private const int FewerTimes = 5;
    private const int States = 3;
    private const double FarK = 4;
    private const double FarPct = 20;

    /// <summary>The findings, with questions in place of what names alone would say.</summary>
    public static IReadOnlyList<ColumnFinding> Asked(IReadOnlyList<ColumnFinding> findings)
    {
        ColumnFinding[] asked = [.. findings];
        var groups = findings.Index().Where(f => f.Item.Channel.Channels.Length == 1)
            .GroupBy(f => (f.Item.Channel.Channels[0], f.Item.House, f.Item.Facts.Header.Bare, string.Join('\u001f', f.Item.Where.Select(w => w.Text))));
        foreach (int[] group in groups.Select(g => g.Select(f => f.Index).ToArray()).Where(g => g.Length > 1))
        {
            int most = group.Max(i => findings[i].Facts.Distinct);
            int[] rich = [.. group.Where(i => !IsPoor(findings[i].Facts, most))];
            int[] poor = [.. group.Except(rich)];
            foreach (int i in rich.Length > 1 && !rich.Skip(1).All(i => Overlap(findings[rich[0]].Facts, findings[i].Facts)) ? group : poor)
            {
                asked[i] = findings[i] with { Channel = Question(findings, i, group) };
            }
        }

        return Far(Strange(asked));
    }

    /// <summary>Beside a column that is plainly of the air, one with a word that means nothing known may be of something else.</summary>
    private static ColumnFinding[] Strange(ColumnFinding[] findings)
    {
        foreach (var group in findings.Index().Where(f => f.Item.Channel.Channels is ["airTemperature"] && f.Item.Where.IsEmpty).GroupBy(f => f.Item.House).ToArray())
        {
            bool plain = group.Any(f => UnknownWord(f.Item.Facts.Header) is null);
            foreach ((int i, ColumnFinding finding) in group.Where(f => plain))
            {
                if (UnknownWord(finding.Facts.Header) is { } word)
                {
                    findings[i] = finding with { Channel = ChannelGuess.Either($"another column is plainly of the air; is \"{word}\" a place in it?", [.. finding.Channel.Channels]) };
                }
            }
        }

        return findings;
    }

    /// <summary>A word of three letters or more that is neither known nor a place or name of a sensor; null for none.</summary>
    private static string? UnknownWord(HeaderText header)
    {
        char[] rest = header.Text.ToCharArray();
        foreach (FoundWord found in header.Words)
        {
            rest.AsSpan(found.At, Math.Min(found.Word.Length, rest.Length - found.At)).Fill(' ');
        }

        return Array.Find(new string(rest).Split(' '), w => w.Length > 2 && w.All(char.IsAsciiLetter) && !Places.Contains(w));
    }

    /// <summary>
    /// Sensors of the air of one house seldom part by more than a few degrees or some tens of percent in the middle of their values; one that does
    /// may be of another house, of the glass or of water. Common practice, no source.
    /// </summary>
    private static ColumnFinding[] Far(ColumnFinding[] findings)
    {
        foreach (var group in findings.Index().Where(f => f.Item.Channel.Channels is ["airTemperature"] or ["relativeHumidity"] && f.Item.Facts.Count > 0 && f.Item.Unit is not null).GroupBy(f => (f.Item.Channel.Channels[0], f.Item.House)).ToArray())
        {
            (int Index, double Middle)[] middles = [.. group.Select(f => (f.Index, Middle(f.Item))).OrderBy(m => m.Item2)];
            double middle = middles[(middles.Length - 1) / 2].Middle;
            double limit = group.Key.Item1 == "airTemperature" ? FarK : FarPct;
            foreach ((int i, double own) in middles.Where(m => Math.Abs(m.Middle - middle) > limit || (middles.Length == 2 && middles[1].Middle - middles[0].Middle > limit)))
            {
                string values = string.Create(CultureInfo.InvariantCulture, $"{findings[i].Facts.At(0.02):0.###} to {findings[i].Facts.At(0.98):0.###}");
                findings[i] = findings[i] with { Channel = ChannelGuess.Either($"its values ({values}) lie far from those of another column of this channel: of the air of this house?", [.. findings[i].Channel.Channels]) };
            }
        }

        return findings;
    }

    private static double Middle(ColumnFinding finding)
        => UnitCatalogue.TryGet(ChannelCatalogue.Get(finding.Channel.Channels[0]).Quantity, finding.Unit!.Codes[0], out Unit? unit) ? unit.ToSi(finding.Facts.Median) : finding.Facts.Median;

    private static bool IsPoor(ColumnFacts facts, int most) => (most > FewValues && facts.Distinct * FewerTimes < most) || (most > 2 * States && facts.Distinct <= States);

    private static bool Overlap(ColumnFacts one, ColumnFacts other)
    {
        double shared = Math.Min(one.At(0.95), other.At(0.95)) - Math.Max(one.At(0.05), other.At(0.05));
        return shared > 0 || one.At(0.5) == other.At(0.5);
    }

    private static ChannelGuess Question(IReadOnlyList<ColumnFinding> findings, int asked, int[] group)
    {
        ColumnFacts facts = findings[asked].Facts;
        string others = string.Join(", ", group.Where(i => i != asked).Select(i => findings[i].Facts.Column + 1));
        return ChannelGuess.Either(string.Create(CultureInfo.InvariantCulture, $"it has the name of column {others} and other values ({facts.At(0.02):0.###} to {facts.At(0.98):0.###}): is it this?"), [.. findings[asked].Channel.Channels]);
    }
}
