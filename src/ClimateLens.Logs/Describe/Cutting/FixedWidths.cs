using System.Collections.Immutable;
using System.Globalization;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Finds cells that always stand at the same place of their line: where no line has a character, one cell ends.</summary>
internal static class FixedWidths
{
    private const int FewestLines = 5;
    private const int LongestLine = 4000;

    /// <summary>The widths; null when the lines are no such table.</summary>
    public static CutGuess? Of(List<string> lines, char quote)
    {
        string[] data = [.. lines.Where(IsData)];
        int length = data.Select(line => line.TrimEnd().Length).DefaultIfEmpty(0).Max();
        if (data.Length < FewestLines || length is 0 or > LongestLine || Array.Exists(data, line => line.Contains('\t')))
        {
            return null;
        }

        bool[] written = new bool[length];
        foreach (string line in data)
        {
            for (int i = 0; i < line.Length && i < length; i++)
            {
                written[i] |= line[i] is not (' ' or '\u00A0');
            }
        }

        ImmutableArray<int> widths = Cut(written);
        if (widths.Length < 2)
        {
            return null;
        }

        string evidence = string.Create(CultureInfo.InvariantCulture, $"{data.Length} lines have blanks at the same places, and cells that are blank");
        return new CutGuess(new WidthCutter(widths), null, widths, quote, widths.Length, Sureness.Likely, evidence);
    }

    /// <summary>Lines of a table are mostly digits, marks and blanks.</summary>
    private static bool IsData(string line)
    {
        int letters = line.Count(char.IsLetter);
        int digits = line.Count(char.IsAsciiDigit);
        return digits > 3 && digits > letters && line.AsSpan().IndexOfAny(";|") < 0;
    }

    private static ImmutableArray<int> Cut(bool[] written)
    {
        var widths = ImmutableArray.CreateBuilder<int>();
        int start = 0;
        for (int i = 1; i < written.Length; i++)
        {
            if (!written[i] && written[i - 1])
            {
                widths.Add(i - start);
                start = i;
            }
        }

        widths.Add(written.Length - start);
        return widths.ToImmutable();
    }
}
