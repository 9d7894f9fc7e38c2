using System.Text;
using NodaTime.Text;

namespace ClimateLens.Nursery.Time;

/// <summary>
/// Date patterns in the letters of Unicode UTS 35 (LDML, Part 4, "Date Format Patterns"), as far as exports need them:
/// <c>yyyy yy M MM d dd H HH h hh mm ss S… a X… x…</c>, text between 'quotes' and any mark; <c>iso</c> stands for ISO 8601.
/// A two-digit year from 00 to 69 lies in this century, 70 to 99 in the last one.
/// </summary>
public static class StampPattern
{
    /// <summary>The word for ISO 8601.</summary>
    public const string Iso = "iso";

    private const int LastYearOfCentury = 69;
    private const int MostFractionDigits = 9;

    private static readonly string[] Known = ["yyyy", "yy", "M", "MM", "d", "dd", "H", "HH", "h", "hh", "mm", "ss", "a", "X", "XX", "XXX", "x", "xx", "xxx"];

    /// <summary>What is wrong with a pattern, or null when it can be used.</summary>
    /// <param name="pattern">The pattern, not <see cref="Iso"/>.</param>
    /// <param name="timeNeeded">Whether an hour and minutes have to be there.</param>
    public static string? FaultOf(string pattern, bool timeNeeded)
    {
        if (Split(pattern) is not { } fields)
        {
            return "a quote that is not closed";
        }

        string[] letters = [.. fields.Where(f => f.IsLetters).Select(f => f.Text)];
        foreach (string field in letters)
        {
            if (!Known.Contains(field) && !(field[0] == 'S' && field.Length <= MostFractionDigits))
            {
                return MeaningOf(field);
            }
        }

        string? twice = letters.GroupBy(f => char.ToUpperInvariant(f[0]) == 'H' ? 'H' : f[0]).FirstOrDefault(g => g.Count() > 1)?.First();
        return twice is not null ? $"{twice} twice" : MissingFrom(letters, timeNeeded);
    }

    /// <summary>Whether a pattern is a date, one blank and a time of day, so that the two can stand in columns of their own.</summary>
    public static bool IsDateBlankTime(string pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        int blank = pattern.IndexOf(' ', StringComparison.Ordinal);
        string date = blank < 0 ? "" : pattern[..blank];
        string time = blank < 0 ? "" : pattern[(blank + 1)..];
        return date.Contains('y', StringComparison.Ordinal) && date.Contains('M', StringComparison.Ordinal) && date.Contains('d', StringComparison.Ordinal)
            && time.Contains('H', StringComparison.OrdinalIgnoreCase) && !time.Contains('y', StringComparison.Ordinal);
    }

    /// <summary>NodaTime's pattern for one without a fault and without an offset; throws <see cref="ArgumentException"/> for another.</summary>
    public static LocalDateTimePattern ToParser(string pattern)
    {
        if (Split(pattern) is not { } fields || FaultOf(pattern, timeNeeded: false) is not null
            || fields.Exists(f => f.IsLetters && f.Text[0] is 'X' or 'x'))
        {
            throw new ArgumentException($"The date pattern {pattern} cannot be used.", nameof(pattern));
        }

        StringBuilder noda = new();
        foreach ((string text, bool isLetters) in fields)
        {
            noda.Append(isLetters ? NodaField(text) : Quoted(text));
        }

        return LocalDateTimePattern.CreateWithInvariantCulture(noda.ToString()).WithTwoDigitYearMax(LastYearOfCentury);
    }

    private static string NodaField(string field) => field[0] switch
    {
        'y' when field.Length == 4 => "uuuu",
        'S' => new string('f', field.Length),
        'a' => "tt",
        _ => field,
    };

    private static string Quoted(string text) => string.Concat(text.Select(c => c == ' ' ? " " : $"\\{c}"));

    private static string? MissingFrom(string[] letters, bool timeNeeded)
    {
        bool Has(char letter) => letters.Any(f => f[0] == letter);

        if (!Has('y') || !Has('M') || !Has('d'))
        {
            return !Has('y') ? "no year (yyyy)" : !Has('M') ? "no month (MM)" : "no day (dd)";
        }

        if (Has('h') != Has('a'))
        {
            return Has('h') ? "hh (1 to 12) without a (AM or PM)" : "a (AM or PM) without hh (1 to 12)";
        }

        bool hour = Has('H') || Has('h');
        if (timeNeeded && (!hour || !Has('m')))
        {
            return hour ? "no minutes (mm)" : "no hour (HH)";
        }

        bool loose = (Has('m') && !hour) || (Has('s') && !Has('m')) || (Has('S') && !Has('s'));
        return loose ? "a smaller part of the time without the larger one" : null;
    }

    private static string MeaningOf(string field) => field[0] switch
    {
        'Y' => $"{field}, the year of the week (the year is yyyy)",
        'D' => $"{field}, the day of the year (the day of the month is dd)",
        'w' or 'W' => $"{field}, a week number",
        'E' or 'e' or 'c' => $"{field}, the day of the week",
        'k' or 'K' => $"{field} (hours are HH, or hh with a)",
        'M' => $"{field}, the month's name (the month's number is MM)",
        _ => field,
    };

    /// <summary>Runs of one letter, and all between them; null when a quote is not closed.</summary>
    private static List<(string Text, bool IsLetters)>? Split(string pattern)
    {
        List<(string, bool)> fields = [];
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

                fields.Add((close == end ? "'" : pattern[end..close], false));
                at = close + 1;
                continue;
            }

            bool isLetter = char.IsAsciiLetter(pattern[at]);
            while (isLetter && end < pattern.Length && pattern[end] == pattern[at])
            {
                end++;
            }

            fields.Add((pattern[at..end], isLetter));
            at = end;
        }

        return fields;
    }
}
