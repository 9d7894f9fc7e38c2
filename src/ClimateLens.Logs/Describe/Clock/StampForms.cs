using System.Collections.Immutable;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>Lists the ways to read the parts of a stamp: date, time of day, or one after the other.</summary>
internal static class StampForms
{
    /// <summary>The forms; empty when the parts are no stamp.</summary>
    public static IEnumerable<StampForm> Of(IReadOnlyList<StampToken> tokens)
    {
        if (tokens.Count is 0 or > 24)
        {
            yield break;
        }

        foreach (Part date in DateForms.At(tokens, 0))
        {
            StampHolds holds = date.Fields.Any(f => f.Letter == 'y') ? StampHolds.Date : StampHolds.Date | StampHolds.Yearless;
            if (date.End == tokens.Count && tokens.Count >= 3)
            {
                yield return new StampForm(date.Fields, holds);
            }

            foreach (Part gap in Gap(tokens, date.End))
            {
                foreach (Part time in TimeForms.At(tokens, gap.End).Where(t => t.End == tokens.Count))
                {
                    yield return new StampForm([.. date.Fields, .. gap.Fields, .. time.Fields], holds | StampHolds.TimeOfDay);
                }
            }
        }

        foreach (Part time in TimeForms.At(tokens, 0))
        {
            if (time.End == tokens.Count && tokens.Count >= 3)
            {
                yield return new StampForm(time.Fields, StampHolds.TimeOfDay);
            }

            foreach (Part gap in Gap(tokens, time.End))
            {
                foreach (Part date in DateForms.At(tokens, gap.End).Where(d => d.End == tokens.Count && d.Fields.Any(f => f.Letter == 'y')))
                {
                    yield return new StampForm([.. time.Fields, .. gap.Fields, .. date.Fields], StampHolds.Both);
                }
            }
        }
    }

    /// <summary>What stands between date and time: blanks, 'T', a comma, a mark; also a weekday.</summary>
    private static IEnumerable<Part> Gap(IReadOnlyList<StampToken> tokens, int at)
    {
        var fields = new List<FormField>();
        for (int end = at; end < tokens.Count && end - at < 5; end++)
        {
            StampToken token = tokens[end];
            if (token.Kind == StampTokenKind.Weekday)
            {
                fields.Add(new FormField('E', 3, ""));
            }
            else if (token.Kind is StampTokenKind.Blank or StampTokenKind.Word || (token.Kind == StampTokenKind.Mark && ",;-_/@|".Contains(token.Text, StringComparison.Ordinal)))
            {
                fields.Add(new FormField('\0', 0, token.Text));
            }
            else
            {
                yield break;
            }

            if (token.Kind != StampTokenKind.Word || token.Text.Length <= 4)
            {
                yield return new Part([.. fields], end + 1);
            }
        }
    }
}

/// <summary>A stretch of tokens and how it reads.</summary>
/// <param name="Fields">Its fields.</param>
/// <param name="End">Index of the token behind it.</param>
internal readonly record struct Part(ImmutableArray<FormField> Fields, int End);
