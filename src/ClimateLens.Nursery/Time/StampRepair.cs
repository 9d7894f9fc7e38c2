using System.Text;

namespace ClimateLens.Nursery.Time;

/// <summary>Guesses the pattern that was meant where letters of another habit were written.</summary>
internal static class StampRepair
{
    private static readonly (string Percent, string Letters)[] Percents =
        [("%Y", "yyyy"), ("%y", "yy"), ("%m", "MM"), ("%d", "dd"), ("%H", "HH"), ("%I", "hh"), ("%M", "mm"), ("%S", "ss"), ("%p", "a")];

    /// <summary>A pattern without a fault that is near to the written one, or null.</summary>
    public static string? Of(string pattern, bool timeNeeded)
    {
        string repaired = pattern.Contains('%', StringComparison.Ordinal)
            ? Percents.Aggregate(pattern, (text, pair) => text.Replace(pair.Percent, pair.Letters, StringComparison.Ordinal))
            : pattern.Contains('\'', StringComparison.Ordinal) ? pattern : Letters(pattern);
        return repaired != pattern && StampPattern.FaultOf(repaired, timeNeeded) is null ? repaired : null;
    }

    /// <summary>Years are y, days d; m and M go by what stands before them; hours without AM and PM are H.</summary>
    private static string Letters(string pattern)
    {
        bool half = pattern.Contains('a', StringComparison.OrdinalIgnoreCase);
        bool inTime = false;
        StringBuilder repaired = new();
        foreach (char c in pattern)
        {
            inTime = c switch
            {
                'h' or 'H' or 'k' or 'K' => true,
                'y' or 'Y' or 'd' or 'D' => false,
                _ => inTime,
            };
            repaired.Append(c switch
            {
                'Y' => "y",
                'D' => "d",
                'h' or 'k' or 'K' when !half => "H",
                'm' or 'M' => inTime ? "m" : "M",
                'A' => "a",
                'T' => "'T'",
                _ => c.ToString(),
            });
        }

        return repaired.ToString();
    }
}
