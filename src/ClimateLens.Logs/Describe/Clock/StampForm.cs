using System.Collections.Immutable;
using System.Text;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>One field of a form: a letter for a run of digits or a name, or a text as it stands.</summary>
/// <param name="Letter">Letter of the pattern; '\0' for a text.</param>
/// <param name="Width">How often it stands at most; 0 to follow the digits of the file.</param>
/// <param name="Text">The text.</param>
/// <param name="Token">Index of the token that it reads, where its width follows the file.</param>
internal readonly record struct FormField(char Letter, int Width, string Text, int Token = -1);

/// <summary>A way to read the stamps of a shape.</summary>
/// <param name="Fields">One for each token; several for packed digits.</param>
/// <param name="Holds">What it holds.</param>
internal sealed record StampForm(ImmutableArray<FormField> Fields, StampHolds Holds)
{
    /// <summary>The order of the date's parts, for example "dMy": patterns of one order mean the same.</summary>
    public string Order => string.Concat(Fields.Select(f => f.Letter).Where(c => c is 'y' or 'M' or 'd' or 'D'));

    /// <summary>The pattern; <paramref name="padded"/> tells of the digits of a token whether there are always two.</summary>
    public string Pattern(Func<int, bool> padded)
    {
        var pattern = new StringBuilder();
        foreach (FormField field in Fields)
        {
            if (field.Letter == '\0')
            {
                pattern.Append(Quoted(field.Text));
                continue;
            }

            pattern.Append(field.Letter, field.Width > 0 ? field.Width : padded(field.Token) ? 2 : 1);
        }

        return pattern.ToString();
    }

    private static string Quoted(string text)
        => text.Any(c => char.IsLetter(c) || c == '\'') ? $"'{text.Replace("'", "", StringComparison.Ordinal)}'" : string.IsNullOrWhiteSpace(text) ? " " : text;
}
