using System.Buffers;
using System.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Markup;

/// <summary>
/// A piece of finished HTML. The only ways to make one are <see cref="Text"/>, which encodes, and
/// <see cref="HtmlBuilder"/>, whose holes encode: text of a user cannot become markup by oversight.
/// </summary>
public readonly record struct Html
{
    private static readonly SearchValues<char> Special = SearchValues.Create(
        [.. "&<>\"'", .. Enumerable.Range(0, 32).Select(c => (char)c), (char)0x7F]);

    private readonly string? _markup;

    internal Html(string markup) => _markup = markup;

    /// <summary>Nothing.</summary>
    public static Html Empty => default;

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => string.IsNullOrEmpty(_markup);

    /// <summary>Text, encoded for elements and quoted attributes; control characters other than tab and line end become U+FFFD.</summary>
    public static Html Text(string? text) => new(Encode(text ?? ""));

    /// <summary>A name that a user chose, encoded and kept from turning the direction of the words around it.</summary>
    public static Html Name(string? text) => new($"<bdi>{Encode(text ?? "")}</bdi>");

    /// <summary>Text that is kept in English, told as such where the page is in another language.</summary>
    public static Html English(string text) => Language.Current.IsEnglish ? Text(text) : new($"<span lang=\"en\">{Encode(text)}</span>");

    /// <summary>The markup.</summary>
    public override string ToString() => _markup ?? "";

    internal static string Encode(string text)
    {
        if (text.AsSpan().IndexOfAny(Special) < 0)
        {
            return text;
        }

        StringBuilder result = new(text.Length + 16);
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => result.Append("&amp;"),
                '<' => result.Append("&lt;"),
                '>' => result.Append("&gt;"),
                '"' => result.Append("&quot;"),
                '\'' => result.Append("&#39;"),
                '\t' or '\n' or '\r' => result.Append(c == '\r' ? ' ' : c),
                < ' ' or (char)0x7F => result.Append('\uFFFD'),
                _ => result.Append(c),
            };
        }

        return result.ToString();
    }
}
