namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>What the marks of a number say of the decimal mark.</summary>
internal enum NumberShape
{
    /// <summary>No number.</summary>
    None,

    /// <summary>Digits alone.</summary>
    Whole,

    /// <summary>A decimal point without doubt: 21.5, 0.125.</summary>
    Point,

    /// <summary>A decimal comma without doubt: 21,5.</summary>
    Comma,

    /// <summary>A point with three digits behind it: 1.234 may be one and a bit or a thousand.</summary>
    PointOrGroup,

    /// <summary>A comma with three digits behind it.</summary>
    CommaOrGroup,

    /// <summary>Commas between groups and a decimal point, or several commas: 1,234.5, 1,234,567.</summary>
    GroupedByComma,

    /// <summary>Points between groups and a decimal comma, or several points: 1.234,5, 1.234.567.</summary>
    GroupedByPoint,

    /// <summary>Blanks or apostrophes between groups: 1 234,5.</summary>
    GroupedByBlank,
}

/// <summary>Tells the shapes of numbers apart.</summary>
internal static class NumberShapes
{
    private const int LongestNumber = 64;

    /// <summary>The shape of a trimmed cell.</summary>
    public static NumberShape Of(ReadOnlySpan<char> cell)
    {
        if (cell.Length is 0 or > LongestNumber)
        {
            return NumberShape.None;
        }

        cell = cell[0] is '-' or '+' or '\u2212' ? cell[1..].TrimStart(' ') : cell;
        int exponent = ExponentAt(cell);
        bool hasExponent = exponent >= 0;
        ReadOnlySpan<char> body = hasExponent ? cell[..exponent] : cell;
        if (body.Length == 0 || !IsBody(body))
        {
            return NumberShape.None;
        }

        int points = body.Count('.');
        int commas = body.Count(',');
        if (body.IndexOfAny(" \u00A0\u202F'’") >= 0)
        {
            return BlankGroups(body) ? NumberShape.GroupedByBlank : NumberShape.None;
        }

        return (points, commas) switch
        {
            (0, 0) => NumberShape.Whole,
            (1, 0) => OneMark(body, '.', hasExponent) ? NumberShape.PointOrGroup : NumberShape.Point,
            (0, 1) => OneMark(body, ',', hasExponent) ? NumberShape.CommaOrGroup : NumberShape.Comma,
            (0, > 1) => AreGroups(body, ',') ? NumberShape.GroupedByComma : NumberShape.None,
            ( > 1, 0) => AreGroups(body, '.') ? NumberShape.GroupedByPoint : NumberShape.None,
            (1, _) when body.LastIndexOf(',') < body.IndexOf('.') && AreGroups(body[..body.IndexOf('.')], ',') => NumberShape.GroupedByComma,
            (_, 1) when body.LastIndexOf('.') < body.IndexOf(',') && AreGroups(body[..body.IndexOf(',')], '.') => NumberShape.GroupedByPoint,
            _ => NumberShape.None,
        };
    }

    /// <summary>Whether the mark may as well stand between groups of three digits.</summary>
    private static bool OneMark(ReadOnlySpan<char> body, char mark, bool hasExponent)
        => !hasExponent && body.Length - body.IndexOf(mark) - 1 == 3 && body.IndexOf(mark) is >= 1 and <= 3 && body[0] != '0';

    private static bool IsBody(ReadOnlySpan<char> body)
    {
        bool digit = false;
        foreach (char c in body)
        {
            digit |= char.IsAsciiDigit(c);
            if (!char.IsAsciiDigit(c) && !".,' ’\u00A0\u202F".Contains(c))
            {
                return false;
            }
        }

        return digit && body[^1] is not (' ' or '\'');
    }

    private static int ExponentAt(ReadOnlySpan<char> cell)
    {
        int at = cell.IndexOfAny('e', 'E');
        if (at <= 0)
        {
            return -1;
        }

        ReadOnlySpan<char> power = cell[(at + 1)..];
        power = power.Length > 0 && power[0] is '-' or '+' ? power[1..] : power;
        return power.Length is >= 1 and <= 4 && power.IndexOfAnyExceptInRange('0', '9') < 0 ? at : -1;
    }

    private static bool AreGroups(ReadOnlySpan<char> whole, char mark)
    {
        int at = whole.IndexOf(mark);
        if (at is < 1 or > 3)
        {
            return false;
        }

        for (; at < whole.Length; at += 4)
        {
            if (whole[at] != mark || whole.Length - at < 4 || whole[(at + 1)..(at + 4)].IndexOfAnyExceptInRange('0', '9') >= 0)
            {
                return false;
            }
        }

        return true;
    }

    private static bool BlankGroups(ReadOnlySpan<char> body)
    {
        int blank = body.IndexOfAny(" \u00A0\u202F'’");
        int mark = body.IndexOfAny('.', ',');
        return (mark < 0 || mark > body.LastIndexOfAny(" \u00A0\u202F'’")) && AreGroups(mark < 0 ? body : body[..mark], body[blank]);
    }
}
