using System.Collections.Frozen;

namespace ClimateLens.Nursery.Records;

/// <summary>The words that files use for the values of an enumeration: the member's name in camelCase.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal static class FileWords<T>
    where T : struct, Enum
{
    /// <summary>All words, in the order of the members.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<T>().Select(Of)];

    private static readonly FrozenDictionary<string, T> ByWord = Enum.GetValues<T>().ToFrozenDictionary(Of, StringComparer.Ordinal);

    /// <summary>The word for a member.</summary>
    public static string Of(T value)
    {
        string name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    /// <summary>Finds the member for an exact word.</summary>
    public static bool TryGet(string word, out T value) => ByWord.TryGetValue(word, out value);
}
