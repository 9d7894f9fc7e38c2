using System.Text;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>What a stamp holds.</summary>
[Flags]
internal enum StampHolds
{
    /// <summary>It is no stamp.</summary>
    Nothing = 0,

    /// <summary>A date.</summary>
    Date = 1,

    /// <summary>A time of day.</summary>
    TimeOfDay = 2,

    /// <summary>Both.</summary>
    Both = Date | TimeOfDay,

    /// <summary>The date names no year.</summary>
    Yearless = 4,
}

/// <summary>How a stamp is written, whatever its figures: cells of one shape can be read by the same patterns.</summary>
/// <param name="Key">The shape as text; runs of one and of two digits count as the same.</param>
/// <param name="Tokens">Parts of the first cell of this shape.</param>
/// <param name="Holds">What it holds.</param>
internal sealed record StampShape(string Key, IReadOnlyList<StampToken> Tokens, StampHolds Holds)
{
    /// <summary>The shape of a trimmed cell.</summary>
    public static StampShape Of(string cell)
    {
        List<StampToken> tokens = StampToken.Cut(cell);
        StampHolds holds = StampForms.Of(tokens).Aggregate(StampHolds.Nothing, (all, form) => all == StampHolds.Nothing ? form.Holds : all);
        return new StampShape(KeyOf(tokens), tokens, holds);
    }

    /// <summary>The shape's name.</summary>
    public static string KeyOf(IEnumerable<StampToken> tokens)
    {
        var key = new StringBuilder();
        foreach (StampToken token in tokens)
        {
            key.Append(token.Kind switch
            {
                StampTokenKind.Digits => token.Text.Length <= 2 ? "1" : new string('1', token.Text.Length),
                StampTokenKind.Month => token.Text.EndsWith('.') ? "M." : "M",
                StampTokenKind.Weekday => token.Text.EndsWith('.') ? "W." : "W",
                StampTokenKind.Half => "A",
                StampTokenKind.Blank => " ",
                _ => token.Text,
            });
        }

        return key.ToString();
    }
}
