using System.Globalization;
using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>Writes values and remarks of TOML.</summary>
internal static class TomlText
{
    /// <summary>A text in double quotes.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '"' => quoted.Append("\\\""),
                '\\' => quoted.Append("\\\\"),
                '\t' => quoted.Append("\\t"),
                < 0x20 or 0x7F => quoted.Append(CultureInfo.InvariantCulture, $"\\u{rune.Value:X4}"),
                _ => quoted.Append(rune.ToString()),
            };
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>A list of texts.</summary>
    public static string List(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Quote))}]";

    /// <summary>A number.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Text fit for a remark: one line, no hidden characters, however long.</summary>
    public static string Remark(string text)
    {
        var plain = new StringBuilder();
        foreach (Rune rune in text.EnumerateRunes())
        {
            string one = rune.ToString();
            plain.Append(one == "\t" ? " " : Excerpt.HasHidden(one) ? "□" : one);
        }

        return plain.ToString();
    }
}
