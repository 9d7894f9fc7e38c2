using System.Text;

namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>Texts that the import by itself reads as no value.</summary>
internal static class MissingWords
{
    private const int LongestWord = 48;

    /// <summary>Whether a trimmed text says that there is no value.</summary>
    public static bool Contains(string text) => text.Length <= LongestWord && Cells.MissingWords.Contains(Encoding.UTF8.GetBytes(text));
}
