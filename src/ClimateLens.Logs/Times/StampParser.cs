using System.Text;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>
/// Reads stamps by a pattern in the letters of UTS 35 (see ClimateLens.Nursery.Time.StampPattern, which says which are allowed), or
/// <c>iso</c>. One letter takes one or two digits, two letters take exactly two; a blank takes any number of blanks.
/// </summary>
internal sealed class StampParser
{
    private readonly List<(char Letter, int Width, byte[] Literal)> _parts = [];
    private readonly bool _iso;

    private StampParser(string text)
    {
        Text = text;
        _iso = text == StampPattern.Iso;
    }

    /// <summary>The pattern as written.</summary>
    public string Text { get; }

    /// <summary>Whether the pattern holds no time of day.</summary>
    public bool IsDateOnly => !_iso && !_parts.Exists(part => part.Letter is 'H' or 'h');

    /// <summary>Compiles a pattern; null when a letter in it has no meaning here, or it names no year, month and day.</summary>
    public static StampParser? TryCompile(string text) => TryCompile(text, needsDate: true);

    /// <summary>The part behind the first blank, for a time of day that stands alone; null where there is none.</summary>
    public StampParser? TimeOfDayPart()
    {
        int blank = Text.IndexOf(' ', StringComparison.Ordinal);
        return blank < 0 ? null : TryCompile(Text[(blank + 1)..], needsDate: false);
    }

    /// <summary>Reads the whole text.</summary>
    public bool TryRead(ReadOnlySpan<byte> text, out LocalStamp stamp)
    {
        if (_iso)
        {
            return IsoStamp.TryRead(text, out stamp);
        }

        stamp = default;
        var scan = new DigitScan(text);
        var fields = new StampFields();
        foreach ((char letter, int width, byte[] literal) in _parts)
        {
            if (!(letter == '\0' ? scan.Literal(literal) : fields.TryRead(letter, width, ref scan)))
            {
                return false;
            }
        }

        return scan.AtEnd && fields.TryStamp(out stamp);
    }

    private static StampParser? TryCompile(string text, bool needsDate)
    {
        var pattern = new StampParser(text);
        if (pattern._iso)
        {
            return pattern;
        }

        for (int i = 0; i < text.Length;)
        {
            int start = i;
            char c = text[i];
            if (c == '\'')
            {
                if (!pattern.AddQuoted(text, ref i))
                {
                    return null;
                }
            }
            else if (char.IsAsciiLetter(c) || c == ' ')
            {
                while (i < text.Length && text[i] == c)
                {
                    i++;
                }

                if (!StampFields.Knows(c, i - start))
                {
                    return null;
                }

                pattern._parts.Add((c, i - start, []));
            }
            else
            {
                i += char.IsSurrogatePair(text, i) ? 2 : 1;
                pattern._parts.Add(('\0', 0, Encoding.UTF8.GetBytes(text[start..i])));
            }
        }

        return pattern.IsComplete(needsDate) ? pattern : null;
    }

    private bool AddQuoted(string text, ref int i)
    {
        int end = text.IndexOf('\'', i + 1);
        if (end < 0)
        {
            return false;
        }

        string literal = end == i + 1 ? "'" : text[(i + 1)..end];
        _parts.Add(('\0', 0, Encoding.UTF8.GetBytes(literal)));
        i = end + 1;
        return true;
    }

    private bool IsComplete(bool needsDate)
    {
        bool Has(char letter) => _parts.Exists(part => part.Letter == letter);
        bool date = Has('y') && Has('M') && Has('d');
        return (date || !needsDate) && (!Has('h') || Has('a')) && (!Has('m') || Has('H') || Has('h'));
    }
}
