using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>Waterings of a period that cannot be judged, since their method is not known.</summary>
/// <param name="Unknown">These waterings.</param>
/// <param name="Total">All waterings of the period.</param>
/// <param name="Words">Words for methods in the log that are not known, each once, in ordinal order and quotes.</param>
/// <param name="WithWord">Waterings with such a word; the others tell of no method at all.</param>
internal sealed record UnknownMethods(IReadOnlyList<Watering> Unknown, int Total, IReadOnlyList<string> Words, int WithWord)
{
    /// <summary>Waterings that tell of no method.</summary>
    public int WithoutWord => Unknown.Count - WithWord;

    /// <summary>Finds them; null when there are none.</summary>
    public static UnknownMethods? Of(HouseInput input, IReadOnlyList<Watering> waterings)
    {
        Watering[] unknown = [.. waterings.Where(w => w.Method is null)];
        if (unknown.Length == 0)
        {
            return null;
        }

        string[] words = [.. LoggedWaterings.Of(input).Where(e => e.UnknownMethod.Length > 0 && input.Period.Contains(e.Start)).Select(e => $"\"{e.UnknownMethod}\"")];
        return new UnknownMethods(unknown, waterings.Count, [.. words.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)], Math.Min(words.Length, unknown.Length));
    }

    /// <summary>Why they are not known, as a sentence.</summary>
    public string Sentence()
    {
        string[] parts =
        [
            .. WithWord > 0 ? [Phrase.Of($"{WithWord} with words that are not known: {Say.List(Words)}")] : (string[])[],
            .. WithoutWord > 0 ? [Phrase.Of($"{WithoutWord} without a method")] : (string[])[],
        ];
        return Phrase.Of($"The method of {Unknown.Count} of {Say.Count(Total, "watering")} is not known ({string.Join("; ", parts)}): whether they wet leaves, and whether they came too late, cannot be told.");
    }
}
