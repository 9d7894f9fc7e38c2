using System.Collections.Immutable;

namespace ClimateLens.Nursery.Time;

/// <summary>
/// Date patterns in the letters of Unicode UTS 35 (LDML, Part 4, "Date Format Patterns"), as far as exports need them:
/// year <c>yyyy yy</c>, month <c>MM M</c> or by name <c>MMM MMMM</c>, day <c>dd d</c> or day of the year <c>DDD D</c>, day of the week
/// <c>E</c> to <c>EEEE</c>, hour <c>HH H</c> or <c>hh h</c> with <c>a</c>, <c>mm m ss s S…</c>, offset <c>X… x…</c>, text between 'quotes' and any mark.
/// A two-digit year from 00 to 69 lies in this century, 70 to 99 in the last one.
/// </summary>
public static class StampPattern
{
    private const int MostFractionDigits = 9;

    private static readonly ImmutableArray<string> Known =
    [
        "yyyy", "yy", "M", "MM", "MMM", "MMMM", "d", "dd", "D", "DD", "DDD", "E", "EE", "EEE", "EEEE",
        "H", "HH", "h", "hh", "m", "mm", "s", "ss", "a", "X", "XX", "XXX", "x", "xx", "xxx",
    ];

    /// <summary>What is wrong with a pattern, or null when it can be used.</summary>
    /// <param name="pattern">The pattern, none of <see cref="StampWords"/>.</param>
    /// <param name="timeNeeded">Whether an hour has to be there.</param>
    /// <param name="yearNeeded">Whether a year has to be there; if not, there must be none.</param>
    public static string? FaultOf(string pattern, bool timeNeeded, bool yearNeeded = true)
    {
        if (StampField.Split(pattern) is not { } fields)
        {
            return "a quote that is not closed";
        }

        StampField[] letters = [.. fields.Where(f => f.IsLetters)];
        foreach (StampField field in letters)
        {
            if (!Known.Contains(field.Text) && !(field.Letter == 'S' && field.Width <= MostFractionDigits))
            {
                return MeaningOf(field);
            }
        }

        string? twice = letters.GroupBy(f => char.ToUpperInvariant(f.Letter) is 'H' or 'X' ? char.ToUpperInvariant(f.Letter) : f.Letter).FirstOrDefault(g => g.Count() > 1)?.First().Text;
        return twice is not null ? $"{twice} twice" : MissingFrom(letters, timeNeeded, yearNeeded) ?? Unseparated(fields);
    }

    /// <summary>
    /// Where the time of day begins in a pattern that is a date, one blank and a time of day, so that the two can stand in columns of
    /// their own; -1 when it is none.
    /// </summary>
    public static int TimeOfDayStart(IReadOnlyList<StampField> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        int first = 0;
        while (first < fields.Count && !fields[first].IsTime)
        {
            first++;
        }

        bool apart = first > 0 && first < fields.Count && fields[first - 1].Letter == ' ';
        return apart && fields.Take(first).Any(f => f.IsDate) && !fields.Skip(first).Any(f => f.IsDate) ? first : -1;
    }

    /// <summary>Whether a pattern is a date, one blank and a time of day, so that the two can stand in columns of their own.</summary>
    public static bool IsDateBlankTime(string pattern) => StampField.Split(pattern) is { } fields && TimeOfDayStart(fields) > 0;

    private static string? MissingFrom(StampField[] letters, bool timeNeeded, bool yearNeeded)
    {
        bool Has(char letter) => letters.Any(f => f.Letter == letter);

        if (Has('y') != yearNeeded)
        {
            return yearNeeded ? "no year (yyyy)" : "a year, and year is given as well";
        }

        if (Has('D'))
        {
            if (Has('M') || Has('d'))
            {
                return $"{letters.First(f => f.Letter == 'D').Text}, the day of the year, beside {letters.First(f => f.Letter is 'M' or 'd').Text}";
            }
        }
        else if (!Has('M') || !Has('d'))
        {
            return !Has('M') ? "no month (MM)" : "no day (dd)";
        }

        if (Has('h') != Has('a'))
        {
            return Has('h') ? "hh (1 to 12) without a (AM or PM)" : "a (AM or PM) without hh (1 to 12)";
        }

        bool hour = Has('H') || Has('h');
        if (timeNeeded && !hour)
        {
            return "no hour (HH)";
        }

        bool loose = (Has('m') && !hour) || (Has('s') && !Has('m')) || (Has('S') && !Has('s'));
        return loose ? "a smaller part of the time without the larger one" : null;
    }

    /// <summary>Digits without a mark between them can be told apart when at most one of the parts has no fixed width.</summary>
    private static string? Unseparated(List<StampField> fields)
    {
        StampField? loose = null;
        foreach (StampField field in fields)
        {
            if (!field.IsDigits)
            {
                loose = null;
            }
            else if (field.FixedDigits == 0)
            {
                if (loose is StampField other)
                {
                    return $"{other.Text} and {field.Text} without a mark between them";
                }

                loose = field;
            }
        }

        return null;
    }

    private static string MeaningOf(StampField field) => field.Letter switch
    {
        'Y' => $"{field.Text}, the year of the week (the year is yyyy)",
        'w' or 'W' => $"{field.Text}, a week number",
        'e' or 'c' => $"{field.Text}, the number of the weekday (its name is EEE)",
        'k' or 'K' => $"{field.Text} (hours are HH, or hh with a)",
        'z' or 'Z' or 'V' or 'v' or 'O' => $"{field.Text}, the name of a zone (an offset like +01:00, Z or UTC is XXX)",
        _ => field.Text,
    };
}
