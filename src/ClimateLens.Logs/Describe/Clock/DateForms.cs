namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Ways to read a date.</summary>
internal static class DateForms
{
    /// <summary>The dates that may begin at a token.</summary>
    public static IEnumerable<Part> At(IReadOnlyList<StampToken> tokens, int at)
    {
        var lead = new List<FormField>();
        if (at < tokens.Count && tokens[at].Kind == StampTokenKind.Weekday)
        {
            lead.Add(new FormField('E', 3, ""));
            at++;
            while (at < tokens.Count && (tokens[at].Kind == StampTokenKind.Blank || tokens[at].Is(',') || tokens[at].Is('.') || tokens[at].Is('-')))
            {
                lead.Add(new FormField('\0', 0, tokens[at++].Text));
            }
        }

        foreach (Part part in Plain(tokens, at))
        {
            yield return part with { Fields = [.. lead, .. part.Fields] };
        }
    }

    private static IEnumerable<Part> Plain(IReadOnlyList<StampToken> tokens, int at)
        => Packed(tokens, at).Concat(Named(tokens, at)).Concat(Numbered(tokens, at)).Concat(Yearless(tokens, at));

    /// <summary>2025-10-13, 13/10/2025, 13.10.25, 2025-286.</summary>
    private static IEnumerable<Part> Numbered(IReadOnlyList<StampToken> tokens, int at)
    {
        if (at + 2 < tokens.Count && tokens[at].Digits == 4 && IsMark(tokens[at + 1]) && tokens[at + 2].Digits == 3)
        {
            yield return new Part([Year(4), Mark(tokens[at + 1]), new FormField('D', 3, "")], at + 3);
        }

        if (at + 4 >= tokens.Count || !IsMark(tokens[at + 1]) || !IsMark(tokens[at + 3]))
        {
            yield break;
        }

        (int first, int second, int third) = (tokens[at].Digits, tokens[at + 2].Digits, tokens[at + 4].Digits);
        string[] orders = (first, second, third) switch
        {
            (4, 1 or 2, 1 or 2) => ["yMd", "ydM"],
            (1 or 2, 1 or 2, 4) => ["dMy", "Mdy"],
            (1 or 2, 1 or 2, 2) when tokens[at + 1].Text == tokens[at + 3].Text => first == 2 ? ["dMy", "Mdy", "yMd"] : ["dMy", "Mdy"],
            _ => [],
        };
        foreach (string order in orders)
        {
            yield return new Part(
                [Field(order[0], tokens, at), Mark(tokens[at + 1]), Field(order[1], tokens, at + 2), Mark(tokens[at + 3]), Field(order[2], tokens, at + 4)], at + 5);
        }
    }

    /// <summary>13 Oct 2025, 13-okt-25, Oct 13, 2025, 2025-okt-13.</summary>
    private static IEnumerable<Part> Named(IReadOnlyList<StampToken> tokens, int at)
    {
        var fields = new List<FormField>();
        var order = new List<char>();
        int month = Enumerable.Range(at, Math.Min(7, tokens.Count - at)).FirstOrDefault(i => tokens[i].Kind == StampTokenKind.Month, -1);
        for (int i = at; i < tokens.Count && month >= 0 && i - at < 10; i++)
        {
            StampToken token = tokens[i];
            if (token.Kind == StampTokenKind.Digits && token.Digits is 1 or 2 or 4)
            {
                bool year = token.Digits == 4 || order.Contains('d');
                order.Add(year ? 'y' : 'd');
                fields.Add(Field(order[^1], tokens, i));
            }
            else if (token.Kind == StampTokenKind.Month)
            {
                order.Add('M');
                fields.Add(new FormField('M', 3, ""));
            }
            else if (IsMark(token) || token.Is(',') || (token.Kind == StampTokenKind.Word && token.Text is "de" or "del" or "of" or "den"))
            {
                fields.Add(new FormField('\0', 0, token.Text));
            }
            else
            {
                yield break;
            }

            if (order.Distinct().Count() != order.Count)
            {
                yield break;
            }

            if (order.Count == 3 && order.Contains('M'))
            {
                yield return new Part([.. fields], i + 1);
                yield break;
            }

            if (order.Count == 2 && order.Contains('M') && order.Contains('d') && i + 1 < tokens.Count && tokens[i + 1].Kind == StampTokenKind.Blank)
            {
                yield return new Part([.. fields], i + 1);
            }
        }
    }

    /// <summary>20251013, 251013, 13102025 and the same with hours, minutes and seconds.</summary>
    private static IEnumerable<Part> Packed(IReadOnlyList<StampToken> tokens, int at)
    {
        if (at >= tokens.Count)
        {
            yield break;
        }

        string[] forms = tokens[at].Digits switch
        {
            6 => ["yyMMdd", "ddMMyy", "MMddyy"],
            7 => ["yyyyDDD"],
            8 => ["yyyyMMdd", "ddMMyyyy", "MMddyyyy"],
            _ => [],
        };
        foreach (string form in forms)
        {
            yield return new Part([.. Fields(form)], at + 1);
        }
    }

    /// <summary>13-10 or 13/10 or 13.10. before a time of day.</summary>
    private static IEnumerable<Part> Yearless(IReadOnlyList<StampToken> tokens, int at)
    {
        if (at + 4 >= tokens.Count || tokens[at].Digits is < 1 or > 2 || !IsMark(tokens[at + 1]) || tokens[at + 2].Digits is < 1 or > 2)
        {
            yield break;
        }

        int end = at + 3;
        bool point = tokens[end].Is('.') && tokens[at + 1].Is('.');
        if (tokens[end + (point ? 1 : 0)].Kind != StampTokenKind.Blank)
        {
            yield break;
        }

        foreach (string order in (string[])["dM", "Md"])
        {
            FormField[] fields = [Field(order[0], tokens, at), Mark(tokens[at + 1]), Field(order[1], tokens, at + 2), .. point ? [Mark(tokens[end])] : Array.Empty<FormField>()];
            yield return new Part([.. fields], end + (point ? 1 : 0));
        }
    }

    /// <summary>The fields of packed digits.</summary>
    public static IEnumerable<FormField> Fields(string form)
    {
        for (int start = 0; start < form.Length;)
        {
            int end = start;
            while (end < form.Length && form[end] == form[start])
            {
                end++;
            }

            yield return new FormField(form[start], end - start, "");
            start = end;
        }
    }

    private static FormField Year(int width) => new('y', width, "");

    private static FormField Mark(StampToken token) => new('\0', 0, token.Text);

    private static FormField Field(char letter, IReadOnlyList<StampToken> tokens, int at)
        => letter == 'y' ? Year(tokens[at].Digits == 4 ? 4 : 2) : new FormField(letter, 0, "", at);

    private static bool IsMark(StampToken token) => token.Kind == StampTokenKind.Blank || token.Is('-') || token.Is('/') || token.Is('.') || token.Is('_') || token.Is('\u2013');
}
