using System.Text.RegularExpressions;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Knows the slips that people make in TOML, and says how to mend them.</summary>
internal static partial class SyntaxHints
{
    /// <summary>A plain sentence, or null when the line looks like none of the known slips.</summary>
    /// <param name="line">The statement's first line, trimmed.</param>
    /// <param name="runsOn">The slip shows in a later line.</param>
    public static string? For(string line, bool runsOn)
    {
        if (line.StartsWith('['))
        {
            return "write a table's name as [nursery] or, where there can be several, as [[house]].";
        }

        return OfValue(line) ?? (runsOn && line.Contains('[', StringComparison.Ordinal) ? "put a comma between the values of the list and ] at its end." : OfShape(line));
    }

    private static string? OfValue(string line)
    {
        if (CurlyQuotes().IsMatch(line))
        {
            return "use straight quotes: \"text\".";
        }

        if (DecimalComma().Match(line) is { Success: true } comma)
        {
            return $"write the number with a point: {comma.Groups[1].Value}.{comma.Groups[2].Value}";
        }

        if (DayFirst().IsMatch(line))
        {
            return "write the date as year-month-day, for example 2025-08-04.";
        }

        if (DateLike().IsMatch(line))
        {
            return "write a date that exists, as year-month-day, for example 2025-08-04.";
        }

        if (NumberWithUnit().IsMatch(line))
        {
            return "write the number alone; its unit is that of the key.";
        }

        if (YesNo().IsMatch(line))
        {
            return "write true or false.";
        }

        return BackslashText().IsMatch(line) ? "write the path with / instead of \\, or between 'single quotes'." : null;
    }

    private static string? OfShape(string line)
    {
        if (!line.Contains('=', StringComparison.Ordinal) && Colon().IsMatch(line))
        {
            return "write = in place of : after the key.";
        }

        if (!line.Contains('=', StringComparison.Ordinal))
        {
            return "write a key and its value, for example name = \"House 1\"; put # before a remark.";
        }

        if (line.EndsWith('='))
        {
            return "write a value after =, or put # before the line.";
        }

        if (line.Count(c => c == '"') % 2 == 1)
        {
            return "put \" at both ends of the text.";
        }

        return BareText().IsMatch(line) ? "put the text in \"double quotes\"." : null;
    }

    [GeneratedRegex("[“”„‟«»‘’]", RegexOptions.CultureInvariant)]
    private static partial Regex CurlyQuotes();

    [GeneratedRegex(@"=\s*([+-]?\d+),(\d+)\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"=\s*\d{1,2}[./-]\d{1,2}[./-]\d{2,4}", RegexOptions.CultureInvariant)]
    private static partial Regex DayFirst();

    [GeneratedRegex(@"=\s*\d{4}[./-]\d{1,2}[./-]\d{1,2}", RegexOptions.CultureInvariant)]
    private static partial Regex DateLike();

    [GeneratedRegex(@"=\s*[+-]?\d+(\.\d+)?\s*[\p{L}%°²³/]+\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberWithUnit();

    [GeneratedRegex(@"^[\w.-]+\s*:", RegexOptions.CultureInvariant)]
    private static partial Regex Colon();

    [GeneratedRegex(@"=\s*(yes|no|on|off|TRUE|FALSE|True|False)\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex YesNo();

    [GeneratedRegex(@"""[^""]*\\[^""]*""", RegexOptions.CultureInvariant)]
    private static partial Regex BackslashText();

    [GeneratedRegex(@"=\s*[\p{L}_]", RegexOptions.CultureInvariant)]
    private static partial Regex BareText();
}
