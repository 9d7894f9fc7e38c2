namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Ways to read a time of day.</summary>
internal static class TimeForms
{
    /// <summary>The times of day that may begin at a token.</summary>
    public static IEnumerable<Part> At(IReadOnlyList<StampToken> tokens, int at)
    {
        foreach (Part time in Clock(tokens, at).Concat(Packed(tokens, at)))
        {
            foreach (Part half in Half(tokens, time))
            {
                foreach (Part whole in Zone(tokens, half))
                {
                    yield return whole;
                }
            }
        }
    }

    /// <summary>14:05, 14.05, 14h05, 14:05:30, 14:05:30.250.</summary>
    private static IEnumerable<Part> Clock(IReadOnlyList<StampToken> tokens, int at)
    {
        if (at + 2 >= tokens.Count || tokens[at].Digits is < 1 or > 2 || !IsMark(tokens[at + 1]) || tokens[at + 2].Digits != 2)
        {
            yield break;
        }

        var fields = new List<FormField> { new('H', 0, "", at), Text(tokens[at + 1]), new('m', 2, "") };
        int end = at + 3;
        yield return new Part([.. fields], end);
        if (end < tokens.Count && tokens[end].Kind == StampTokenKind.Word && tokens[end].Text is "u" or "h" or "Uhr" or "uur" or "kl" or "hrs" or "min")
        {
            yield return new Part([.. fields, Text(tokens[end])], end + 1);
        }

        if (end + 1 >= tokens.Count || !IsMark(tokens[end]) || tokens[end + 1].Digits is < 1 or > 2)
        {
            yield break;
        }

        fields.AddRange([Text(tokens[end]), new FormField('s', tokens[end + 1].Digits == 1 ? 1 : 2, "")]);
        end += 2;
        yield return new Part([.. fields], end);
        if (end + 1 < tokens.Count && (tokens[end].Is('.') || tokens[end].Is(',') || tokens[end].Is(':')) && tokens[end + 1].Digits is >= 1 and <= 9)
        {
            yield return new Part([.. fields, Text(tokens[end]), new FormField('S', tokens[end + 1].Digits, "")], end + 2);
        }
    }

    /// <summary>1405 and 140530 after a date; 830 and 5 are the same with zeros left out.</summary>
    private static IEnumerable<Part> Packed(IReadOnlyList<StampToken> tokens, int at)
    {
        if (at == 0 || at >= tokens.Count || tokens[at].Digits is < 1 or > 6)
        {
            yield break;
        }

        yield return new Part(tokens[at].Digits switch
        {
            6 => [new('H', 2, ""), new('m', 2, ""), new('s', 2, "")],
            4 => [new('H', 2, ""), new('m', 2, "")],
            _ => [new('H', 1, ""), new('m', 2, "")],
        }, at + 1);
        if (tokens[at].Digits <= 2)
        {
            yield return new Part([new('H', 0, "", at)], at + 1);
        }
    }

    private static IEnumerable<Part> Half(IReadOnlyList<StampToken> tokens, Part time)
    {
        int end = time.End;
        bool blank = end < tokens.Count && tokens[end].Kind == StampTokenKind.Blank;
        int half = blank ? end + 1 : end;
        if (half >= tokens.Count || tokens[half].Kind != StampTokenKind.Half)
        {
            yield return time;
            yield break;
        }

        FormField[] fields = [.. time.Fields.Select(f => f.Letter == 'H' ? f with { Letter = 'h' } : f)];
        FormField[] gap = blank ? [new('\0', 0, " ")] : [];
        yield return new Part([.. fields, .. gap, new FormField('a', 1, "")], half + 1);
    }

    /// <summary>Z, +01:00, +0100, UTC, or the name of a zone, which stands as a word.</summary>
    private static IEnumerable<Part> Zone(IReadOnlyList<StampToken> tokens, Part time)
    {
        yield return time;
        int at = time.End;
        var gap = new List<FormField>();
        while (at < tokens.Count && (tokens[at].Kind == StampTokenKind.Blank || tokens[at].Is('(')))
        {
            gap.Add(Text(tokens[at++]));
        }

        if (at >= tokens.Count)
        {
            yield break;
        }

        if (tokens[at].Kind == StampTokenKind.Word && tokens[at].Text.ToUpperInvariant() is "Z" or "UTC" or "GMT")
        {
            yield return new Part([.. time.Fields, .. gap, new FormField('X', 3, "")], at + 1);
        }
        else if (tokens[at].Kind == StampTokenKind.Word && tokens[at].Text.Length is >= 2 and <= 6)
        {
            bool closed = at + 1 < tokens.Count && tokens[at + 1].Is(')');
            yield return new Part([.. time.Fields, .. gap, Text(tokens[at]), .. closed ? [Text(tokens[at + 1])] : Array.Empty<FormField>()], at + (closed ? 2 : 1));
        }
        else if (tokens[at].Is('+') || tokens[at].Is('-'))
        {
            bool apart = at + 3 < tokens.Count && tokens[at + 1].Digits == 2 && tokens[at + 2].Is(':') && tokens[at + 3].Digits == 2;
            bool packed = at + 1 < tokens.Count && tokens[at + 1].Digits is 2 or 4;
            if (apart || packed)
            {
                yield return new Part([.. time.Fields, .. gap, new FormField('X', 3, "")], at + (apart ? 4 : 2));
            }
        }
    }

    private static bool IsMark(StampToken token) => token.Is(':') || token.Is('.') || (token.Kind == StampTokenKind.Word && token.Text is "h" or "u" or "H");

    private static FormField Text(StampToken token) => new('\0', 0, token.Text);
}
