using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace ClimateLens.Nursery.Languages;

/// <summary>Text for people in the language of the moment. The literal parts of what it is given, with its holes numbered, name the message.</summary>
public static class Phrase
{
    /// <summary>A message without holes.</summary>
    public static string Of(string message) => Language.Current.Translate(message);

    /// <summary>A message with holes: <c>Phrase.Of($"{n} of {all} were late.")</c>.</summary>
    public static string Of(ref Parts message) => message.Text();

    /// <summary>Marks a message that is translated where it is shown, by <see cref="Of(string)"/>; gives it back as it is.</summary>
    public static string Id(string message) => message;

    /// <summary>A number of things: "1 hour", "3 hours". The messages are "{0} hour" and "{0} hours".</summary>
    public static string Count(int count, string one, string many)
        => Fill(Language.Current.Translate("{0} " + (count == 1 ? one : many)), [count.ToString(CultureInfo.InvariantCulture)]);

    /// <summary>Puts the filled holes into a translated message.</summary>
    /// <param name="message">Text with {0}, {1} and so on.</param>
    /// <param name="holes">What goes into them.</param>
    public static string Fill(string message, IReadOnlyList<string> holes)
    {
        ArgumentNullException.ThrowIfNull(message);
        ArgumentNullException.ThrowIfNull(holes);
        StringBuilder text = new(message.Length);
        for (int i = 0; i < message.Length; i++)
        {
            int end = message[i] == '{' ? message.IndexOf('}', i) : -1;
            if (end > 0 && int.TryParse(message.AsSpan(i + 1, end - i - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int hole) && hole < holes.Count)
            {
                text.Append(holes[hole]);
                i = end;
            }
            else
            {
                text.Append(message[i]);
            }
        }

        return text.ToString();
    }

    /// <summary>Gathers an interpolated string.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Parts
    {
        private readonly StringBuilder _message;
        private readonly List<string>? _holes; // null for English: the message is then the text itself

        /// <summary>Called by the compiler.</summary>
        public Parts(int literalLength, int formattedCount)
        {
            _message = new StringBuilder(literalLength + (8 * formattedCount));
            _holes = Language.Current.IsEnglish ? null : new List<string>(formattedCount);
        }

        /// <summary>A part of the message.</summary>
        public void AppendLiteral(string literal) => _message.Append(literal);

        /// <summary>Text that is in the language already, or a name.</summary>
        public void AppendFormatted(string? text)
        {
            if (_holes is null)
            {
                _message.Append(text);
                return;
            }

            _message.Append(CultureInfo.InvariantCulture, $"{{{_holes.Count}}}");
            _holes.Add(text ?? "");
        }

        /// <summary>A whole number.</summary>
        public void AppendFormatted(int number) => AppendFormatted(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>A whole number.</summary>
        public void AppendFormatted(long number) => AppendFormatted(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>A number as it stands, with the decimal mark of the language.</summary>
        public void AppendFormatted(double number) => AppendFormatted(Language.Current.Number(number.ToString(CultureInfo.InvariantCulture)));

        /// <summary>A name.</summary>
        public void AppendFormatted<T>(T name) where T : notnull => AppendFormatted(name.ToString());

        /// <summary>A number in a format, with the decimal mark of the language.</summary>
        public void AppendFormatted(double number, string format) => AppendFormatted(Language.Current.Number(number.ToString(format, CultureInfo.InvariantCulture)));

        /// <summary>A whole number in a format.</summary>
        public void AppendFormatted(int number, string format) => AppendFormatted(number.ToString(format, CultureInfo.InvariantCulture));

        internal string Text() => _holes is null ? _message.ToString() : Fill(Language.Current.Translate(_message.ToString()), _holes);
    }
}
