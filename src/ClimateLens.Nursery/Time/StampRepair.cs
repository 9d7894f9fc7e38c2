using System.Text;

namespace ClimateLens.Nursery.Time;

/// <summary>Guesses the pattern that was meant where letters of another habit were written.</summary>
internal static class StampRepair
{
    // As in strptime of POSIX and Python.
    private static readonly (string Written, string Letters)[] Percents =
    [
        ("%-", "%"), ("%Y", "yyyy"), ("%y", "yy"), ("%m", "MM"), ("%d", "dd"), ("%e", "d"), ("%j", "DDD"), ("%H", "HH"), ("%I", "hh"), ("%M", "mm"), ("%S", "ss"),
        ("%f", "SSSSSS"), ("%p", "a"), ("%b", "MMM"), ("%B", "MMMM"), ("%a", "EEE"), ("%A", "EEEE"), ("%z", "XXX"), ("%T", "HH:mm:ss"), ("%F", "yyyy-MM-dd"),
    ];

    // As in the cell formats of spreadsheets and in .NET.
    private static readonly (string Written, string Letters)[] Words = [("AM/PM", "a"), ("am/pm", "a"), ("tt", "a"), ("dddd", "EEEE"), ("DDDD", "EEEE"), ("ddd", "EEE")];

    /// <summary>A pattern without a fault that is near to the written one, or null.</summary>
    public static string? Of(string pattern, bool timeNeeded)
    {
        string repaired = pattern.Contains('%', StringComparison.Ordinal)
            ? Replaced(pattern, Percents)
            : pattern.Contains('\'', StringComparison.Ordinal) ? pattern : Letters(Replaced(pattern, Words));
        return repaired != pattern && StampPattern.FaultOf(repaired, timeNeeded) is null ? repaired : null;
    }

    private static string Replaced(string pattern, (string Written, string Letters)[] pairs)
        => pairs.Aggregate(pattern, (text, pair) => text.Replace(pair.Written, pair.Letters, StringComparison.Ordinal));

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
