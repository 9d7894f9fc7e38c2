using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Keys that hold text.</summary>
internal static class TextKeys
{
    private const int LongestText = 200;
    private const int LongestId = 64;

    /// <summary>Names that Windows keeps for devices; folders cannot be called so.</summary>
    private static readonly string[] Reserved = ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(n => new[] { "com" + Digit(n), "lpt" + Digit(n) })];

    /// <summary>The text of a key, or null when it is left out or wrong.</summary>
    /// <param name="reader">The table.</param>
    /// <param name="key">The key.</param>
    /// <param name="example">Shown when the key is missing; null where it may be left out.</param>
    /// <param name="mayBeEmpty">Whether "" has a meaning.</param>
    public static string? Text(this TableReader reader, string key, string? example = null, bool mayBeEmpty = false)
    {
        if (reader.Find(key) is not { } entry)
        {
            if (example is not null)
            {
                reader.Missing(key, example);
            }

            return null;
        }

        return OneText(reader, key, entry.Value, mayBeEmpty);
    }

    /// <summary>A name that becomes part of folder names: letters, digits, '-' and '_', up to 64.</summary>
    public static string? Id(this TableReader reader, string key, string? example = null)
    {
        if (reader.Text(key, example) is not { } id)
        {
            return null;
        }

        if (id.Length > LongestId || !id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
        {
            reader.Faults.Error(FaultCodes.Id, reader.PlaceOf(key), $"{key} = {Excerpt.Quoted(id)}", "up to 64 letters a-z, digits, - and _", "it becomes part of folder names; put anything else into a name or a remark.");
            return null;
        }

        if (Reserved.Contains(id.ToLowerInvariant()) || id.Equals(ReadingBatch.WholeNursery, StringComparison.OrdinalIgnoreCase))
        {
            reader.Faults.Error(FaultCodes.Id, reader.PlaceOf(key), $"{key} = {Excerpt.Quoted(id)}", "another name", "this one is kept for other uses.");
            return null;
        }

        return id;
    }

    /// <summary>One of a fixed set of words.</summary>
    public static string? Choice(this TableReader reader, string key, IReadOnlyList<string> words, string? example = null)
    {
        if (reader.Text(key, example) is not { } word || words.Contains(word))
        {
            return reader.Text(key);
        }

        string all = string.Join(", ", words);
        reader.Faults.Error(FaultCodes.Choice, reader.PlaceOf(key), $"{key} = {Excerpt.Quoted(word)}", $"one of: {all}", NearestName.Mend(word, words, "take one of these words."));
        return null;
    }

    /// <summary>A list of texts; empty when the key is left out or wrong.</summary>
    public static ImmutableArray<string> Texts(this TableReader reader, string key, string example)
    {
        if (reader.Find(key) is not { } entry)
        {
            return [];
        }

        if (entry.Value is not TomlArray { FromHeaders: false } list)
        {
            string written = entry.Value is TomlScalar { Value: string one } ? $"[{Excerpt.Quoted(one)}]" : example;
            reader.WrongType(key, entry.Value, "a list of texts", $"write {key} = {written}");
            return [];
        }

        return [.. list.Items.Select(item => OneText(reader, key, item, mayBeEmpty: false)).OfType<string>()];
    }

    /// <summary>A single character.</summary>
    public static char? Mark(this TableReader reader, string key, string example)
    {
        if (reader.Text(key, mayBeEmpty: true) is not { } text)
        {
            return null;
        }

        if (text.Length == 1 && !char.IsAsciiLetterOrDigit(text[0]))
        {
            return text[0];
        }

        reader.Faults.Error(FaultCodes.Dialect, reader.PlaceOf(key), $"{key} = {Excerpt.Quoted(text)}", "one character that is no letter or digit", text.Equals("tab", StringComparison.OrdinalIgnoreCase) ? $"write a tab as {key} = \"\\t\"" : $"write for example {key} = {example}");
        return null;
    }

    private static string? OneText(TableReader reader, string key, TomlNode value, bool mayBeEmpty)
    {
        if (value is not TomlScalar { Value: string text })
        {
            string mend = value is TomlScalar scalar ? $"write {Excerpt.Quoted(scalar.Source)} in double quotes." : "write one text in double quotes.";
            reader.WrongType(key, value, "text", mend);
            return null;
        }

        if (Fault(text, mayBeEmpty) is { } fault)
        {
            reader.Faults.Error(FaultCodes.Text, value.At, $"{key} = {Excerpt.Quoted(text)}", fault, text.Any(char.IsControl) ? "write it again by hand; in a path write / instead of \\." : "write it again by hand.");
            return null;
        }

        return text;
    }

    private static string? Fault(string text, bool mayBeEmpty)
    {
        if (text != "\t" && Excerpt.HasHidden(text))
        {
            return "text without control characters";
        }

        if (text.Length > LongestText)
        {
            return $"at most {LongestText.ToString(CultureInfo.InvariantCulture)} characters";
        }

        return string.IsNullOrWhiteSpace(text) && !mayBeEmpty ? "some text" : null;
    }

    private static string Digit(int n) => n.ToString(CultureInfo.InvariantCulture);
}
