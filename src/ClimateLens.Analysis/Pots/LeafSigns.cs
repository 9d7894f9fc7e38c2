using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Analysis.Pots;

/// <summary>The words that people write for the state of leaves. The one place that knows them.</summary>
internal static class LeafSigns
{
    /// <summary>The sign for a text; capitals, blanks, hyphens and underscores do not count.</summary>
    public static LeafSign Of(string text) => string.Concat(text.Where(char.IsLetter)).ToLowerInvariant() switch
    {
        "turgid" or "t" or "firm" or "ok" or "fine" => LeafSign.Turgid,
        "flagging" or "f" or "flag" => LeafSign.Flagging,
        "severeflagging" or "s" or "severelyflagging" or "hanging" => LeafSign.SevereFlagging,
        "wilted" or "w" or "wilting" or "limp" => LeafSign.Wilted,
        _ => LeafSign.NotKnown,
    };

    /// <summary>Words of a period's pot checks that are none of these, each once, in quotes and ordinal order.</summary>
    public static string[] UnknownWords(HouseInput input) =>
    [
        .. input.Records.Where(r => r.Kind == RecordKind.PotChecks && input.Period.Contains(r.At)).Select(r => r.Text("leafState").Trim()).Where(t => t.Length > 0 && Of(t) == LeafSign.NotKnown)
            .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Take(10).Select(t => $"\"{t}\""),
    ];

    /// <summary>The sign in a sentence.</summary>
    public static string Words(LeafSign sign) => sign switch
    {
        LeafSign.Turgid => Phrase.Of("turgid"),
        LeafSign.Flagging => Phrase.Of("flagging"),
        LeafSign.SevereFlagging => Phrase.Of("severely flagging"),
        LeafSign.Wilted => Phrase.Of("wilted"),
        _ => Phrase.Of("leaves not noted"),
    };
}
