using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.SetAside;

/// <summary>Bytes from files, made fit to show.</summary>
internal static class SafeText
{
    private const int MostBytes = 256;

    /// <summary>The start of a text in quotes, without control characters.</summary>
    public static string Quote(ReadOnlySpan<byte> utf8) => Quote(Encoding.UTF8.GetString(utf8[..Math.Min(utf8.Length, MostBytes)]));

    /// <summary>The start of a text in quotes, without control characters.</summary>
    public static string Quote(string text) => Excerpt.Quoted(text);
}
