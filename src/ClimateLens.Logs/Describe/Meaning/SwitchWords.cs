using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Tells columns of words for on and off.</summary>
internal static class SwitchWords
{
    /// <summary>Whether a column holds such words and nothing else.</summary>
    public static bool All(NumberTally tally)
        => tally.Words > 0 && !tally.ManyTexts && tally.Texts.Keys.All(t => IsWord(t) || MissingWords.Contains(t)) && tally.Texts.Keys.Any(IsWord);

    private static bool IsWord(string text) => SwitchCell.TryRead(Encoding.UTF8.GetBytes(text), out _);
}
