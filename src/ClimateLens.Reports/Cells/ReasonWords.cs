using System.Collections.Frozen;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Cells;

/// <summary>Plain words for why rows and values were set aside; a code without an entry is spelled out.</summary>
internal static class ReasonWords
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["import.time"] = Phrase.Id("the time could not be read"),
        ["import.timeSkipped"] = Phrase.Id("a time that the clock skipped in spring"),
        ["import.timeTwice"] = Phrase.Id("a time of the repeated hour in autumn that could be either"),
        ["import.fields"] = Phrase.Id("too many or too few fields"),
        ["import.torn"] = Phrase.Id("made of pieces of two rows, it seems"),
        ["import.timeLeap"] = Phrase.Id("a time far away from those above and below"),
        ["import.quotes"] = Phrase.Id("a quote that is not closed"),
        ["import.bytes"] = Phrase.Id("letters that are none in this encoding"),
        ["import.fieldTooLong"] = Phrase.Id("a field that is too long"),
        ["import.headerAgain"] = Phrase.Id("the header again"),
        ["import.house"] = Phrase.Id("a house that the nursery file does not have"),
        ["import.number"] = Phrase.Id("no number"),
        ["import.switch"] = Phrase.Id("neither on nor off"),
        ["import.method"] = Phrase.Id("an unknown way of watering"),
        ["import.level"] = Phrase.Id("no moisture level from 1 to 5"),
        ["import.timeCell"] = Phrase.Id("no time"),
        ["import.cutShort"] = Phrase.Id("the last of its row, which may be cut short"),
        ["import.conflict"] = Phrase.Id("another value than an older file gave for the time; the newer one stands"),
        ["import.repeated"] = Phrase.Id("another row of the same time with other values; the later one stands"),
        ["import.replaced"] = Phrase.Id("a record of an older version of the file that this one lacks"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>For example "2 rows set aside, the time could not be read".</summary>
    public static string Of(SetAsideReason reason)
    {
        string why = Known.TryGetValue(reason.Code, out string? words) ? words : Words.Spaced(reason.Code[(reason.Code.IndexOf('.', StringComparison.Ordinal) + 1)..]);
        return reason.Kind switch
        {
            SetAsideKind.Row => Phrase.Of($"{Words.Count(reason.Count, "row", "rows")} set aside, {why}"),
            SetAsideKind.Cell => Phrase.Of($"{Words.Count(reason.Count, "value", "values")} not read, {why}"),
            _ => Phrase.Of($"older values overruled {Words.Count(reason.Count, "time", "times")}, {why}"),
        };
    }
}
