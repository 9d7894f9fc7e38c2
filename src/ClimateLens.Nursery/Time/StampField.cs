namespace ClimateLens.Nursery.Time;

/// <summary>One part of a date pattern: a run of one letter, a run of blanks, or a mark.</summary>
/// <param name="Letter">The letter; ' ' for blanks; <see cref="Mark"/> for a text that stands as it is.</param>
/// <param name="Text">The run as written, or the text without its quotes.</param>
public sealed record StampField(char Letter, string Text)
{
    /// <summary>The letter of a text that stands as it is.</summary>
    public const char Mark = '\0';

    /// <summary>How often the letter stands.</summary>
    public int Width => Text.Length;

    /// <summary>Whether it is a run of letters.</summary>
    public bool IsLetters => char.IsAsciiLetter(Letter);

    /// <summary>Whether it is written in digits.</summary>
    public bool IsDigits => Letter is 'y' or 'd' or 'D' or 'H' or 'h' or 'm' or 's' or 'S' || (Letter == 'M' && Width <= 2);

    /// <summary>Whether it is a part of the date.</summary>
    public bool IsDate => Letter is 'y' or 'M' or 'd' or 'D' or 'E';

    /// <summary>Whether it is a part of the time of day.</summary>
    public bool IsTime => Letter is 'H' or 'h' or 'm' or 's' or 'S' or 'a';

    /// <summary>Digits of a part that has always as many: years, and letters that stand twice or more; else 0.</summary>
    public int FixedDigits => Letter switch
    {
        'y' => Width == 2 ? 2 : 4,
        'M' or 'd' or 'H' or 'h' or 'm' or 's' when Width == 2 => 2,
        'D' when Width == 3 => 3,
        _ => 0,
    };

    /// <summary>Cuts a pattern into its parts; null when a quote is not closed.</summary>
    public static List<StampField>? Split(string pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        List<StampField> fields = [];
        int at = 0;
        while (at < pattern.Length)
        {
            int end = at + 1;
            if (pattern[at] == '\'')
            {
                int close = pattern.IndexOf('\'', end);
                if (close < 0)
                {
                    return null;
                }

                fields.Add(new StampField(Mark, close == end ? "'" : pattern[end..close]));
                at = close + 1;
                continue;
            }

            bool run = char.IsAsciiLetter(pattern[at]) || pattern[at] == ' ';
            while (end < pattern.Length && (run ? pattern[end] == pattern[at] : char.IsLowSurrogate(pattern[end])))
            {
                end++;
            }

            fields.Add(new StampField(run ? pattern[at] : Mark, pattern[at..end]));
            at = end;
        }

        return fields;
    }
}
