using System.Collections.Frozen;
using ClimateLens.Nursery.Imports;

namespace ClimateLens.Reports.Cells;

/// <summary>Plain words for why rows and values were set aside; a code without an entry is spelled out.</summary>
internal static class ReasonWords
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["import.time"] = "the time could not be read",
        ["import.timeSkipped"] = "a time that the clock skipped in spring",
        ["import.timeTwice"] = "a time of the repeated hour in autumn that could be either",
        ["import.fields"] = "too many or too few fields",
        ["import.torn"] = "made of pieces of two rows, it seems",
        ["import.timeLeap"] = "a time far away from those above and below",
        ["import.quotes"] = "a quote that is not closed",
        ["import.bytes"] = "letters that are none in this encoding",
        ["import.fieldTooLong"] = "a field that is too long",
        ["import.headerAgain"] = "the header again",
        ["import.house"] = "a house that the nursery file does not have",
        ["import.number"] = "no number",
        ["import.switch"] = "neither on nor off",
        ["import.method"] = "an unknown way of watering",
        ["import.level"] = "no moisture level from 1 to 5",
        ["import.timeCell"] = "no time",
        ["import.cutShort"] = "the last of its row, which may be cut short",
        ["import.conflict"] = "another value than an older file gave for the time; the newer one stands",
        ["import.repeated"] = "another row of the same time with other values; the later one stands",
        ["import.replaced"] = "a record of an older version of the file that this one lacks",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>For example "2 rows set aside, the time could not be read".</summary>
    public static string Of(SetAsideReason reason)
    {
        string why = Known.TryGetValue(reason.Code, out string? words) ? words : Words.Spaced(reason.Code[(reason.Code.IndexOf('.', StringComparison.Ordinal) + 1)..]);
        return reason.Kind switch
        {
            SetAsideKind.Row => $"{Words.Count(reason.Count, "row", "rows")} set aside, {why}",
            SetAsideKind.Cell => $"{Words.Count(reason.Count, "value", "values")} not read, {why}",
            _ => $"older values overruled {Words.Count(reason.Count, "time", "times")}, {why}",
        };
    }
}
