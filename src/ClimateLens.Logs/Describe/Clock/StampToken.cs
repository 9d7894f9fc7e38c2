using System.Text;
using ClimateLens.Logs.Times;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>What a part of a stamp is.</summary>
internal enum StampTokenKind
{
    /// <summary>Digits.</summary>
    Digits,

    /// <summary>A month's name.</summary>
    Month,

    /// <summary>A weekday's name.</summary>
    Weekday,

    /// <summary>AM or PM.</summary>
    Half,

    /// <summary>Another word.</summary>
    Word,

    /// <summary>Blanks.</summary>
    Blank,

    /// <summary>One other character.</summary>
    Mark,
}

/// <summary>A part of a stamp.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As written.</param>
internal readonly record struct StampToken(StampTokenKind Kind, string Text)
{
    private const int LongestStamp = 64;

    private static readonly string[] Halves = ["a. m.", "p. m.", "a.m.", "p.m.", "a.m", "p.m", "am", "pm"];

    /// <summary>Number of digits; 0 for what is none.</summary>
    public int Digits => Kind == StampTokenKind.Digits ? Text.Length : 0;

    /// <summary>Whether it is this mark.</summary>
    public bool Is(char mark) => Kind == StampTokenKind.Mark && Text[0] == mark;

    /// <summary>Cuts a cell; empty when it is too long for a stamp.</summary>
    public static List<StampToken> Cut(string cell)
    {
        var tokens = new List<StampToken>();
        for (int at = 0; at < cell.Length && cell.Length <= LongestStamp;)
        {
            StampToken token = Next(cell, at);
            tokens.Add(token);
            at += token.Text.Length;
        }

        return tokens;
    }

    private static StampToken Next(string cell, int at)
    {
        ReadOnlySpan<char> rest = cell.AsSpan(at);
        if (char.IsAsciiDigit(rest[0]))
        {
            return Run(StampTokenKind.Digits, rest, char.IsAsciiDigit);
        }

        if (rest[0] is ' ' or '\t' or '\u00A0' or '\u202F')
        {
            return Run(StampTokenKind.Blank, rest, c => c is ' ' or '\t' or '\u00A0' or '\u202F');
        }

        if (!char.IsLetter(rest[0]))
        {
            return new StampToken(StampTokenKind.Mark, rest[..(char.IsHighSurrogate(rest[0]) && rest.Length > 1 ? 2 : 1)].ToString());
        }

        foreach (string half in Halves)
        {
            if (rest.StartsWith(half, StringComparison.OrdinalIgnoreCase) && (rest.Length == half.Length || !char.IsLetterOrDigit(rest[half.Length])))
            {
                return new StampToken(StampTokenKind.Half, rest[..half.Length].ToString());
            }
        }

        return Word(Run(StampTokenKind.Word, rest, char.IsLetter).Text, rest);
    }

    private static StampToken Run(StampTokenKind kind, ReadOnlySpan<char> rest, Func<char, bool> belongs)
    {
        int end = 1;
        while (end < rest.Length && belongs(rest[end]))
        {
            end++;
        }

        return new StampToken(kind, rest[..end].ToString());
    }

    private static StampToken Word(string word, ReadOnlySpan<char> rest)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(word);
        var scan = new DigitScan(bytes);
        StampTokenKind kind = StampTokenKind.Word;
        if (CalendarNames.TryMonth(ref scan, false, out _) && scan.AtEnd)
        {
            kind = StampTokenKind.Month;
        }
        else
        {
            scan = new DigitScan(bytes);
            kind = CalendarNames.TryWeekday(ref scan, false) && scan.AtEnd ? StampTokenKind.Weekday : kind;
        }

        bool point = kind != StampTokenKind.Word && rest.Length > word.Length && rest[word.Length] == '.';
        return new StampToken(kind, point ? word + "." : word);
    }
}
