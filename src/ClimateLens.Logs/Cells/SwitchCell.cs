using System.Text;

namespace ClimateLens.Logs.Cells;

/// <summary>Reads on and off as words. Further languages are a line each in the table.</summary>
internal static class SwitchCell
{
    private static readonly (byte[] Word, double Value)[] Words =
    [
        .. Of(1, "on", "true", "yes"),
        .. Of(0, "off", "false", "no"),
    ];

    /// <summary>Reads a word, in any case.</summary>
    public static bool TryRead(ReadOnlySpan<byte> cell, out double value)
    {
        foreach ((byte[] word, double meaning) in Words)
        {
            if (Ascii.EqualsIgnoreCase(cell, word))
            {
                value = meaning;
                return true;
            }
        }

        value = 0;
        return false;
    }

    private static IEnumerable<(byte[] Word, double Value)> Of(double value, params string[] words)
        => words.Select(word => (Encoding.ASCII.GetBytes(word), value));
}
