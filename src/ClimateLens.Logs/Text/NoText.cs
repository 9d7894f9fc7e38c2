using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Text;

/// <summary>Tells from the first bytes of a file that it is no table of text.</summary>
internal static class NoText
{
    private const int Looked = 4096;
    private static readonly byte[] Before = [0xEF, 0xBB, 0xBF, (byte)' ', (byte)'\t', (byte)'\r', (byte)'\n'];

    /// <summary>What is wrong, or null.</summary>
    public static Problem? FaultOf(ReadOnlySpan<byte> start, string name)
    {
        start = start[..(start.LastIndexOfAnyExcept((byte)0) + 1)]; // a tail of NUL bytes is not looked at here
        if (IsMarkup(start))
        {
            return ProblemCodes.Binary.In(name, 1, null, "a web page or XML", "text", "Open it in a spreadsheet program and save it as .xlsx or CSV; some programs give such pages the ending .xls.");
        }

        // Lone NUL bytes may come from a torn row or an unwritten tail; a file that starts with them is no text.
        int nuls = start[..Math.Min(start.Length, Looked)].Count((byte)0);
        if (nuls == 0)
        {
            return null;
        }

        ReadOnlySpan<byte> before = start[..start.IndexOf((byte)0)];
        int line = Math.Max(before.Count((byte)'\n'), before.Count((byte)'\r')) + 1;
        bool wide = nuls * 3 > Math.Min(start.Length, Looked);
        string mend = wide ? "If it is text, set encoding to utf-16le or utf-16be." : ProblemCodes.Binary.Mend;
        return nuls * 20 > Math.Min(start.Length, Looked) || line == 1 ? ProblemCodes.Binary.In(name, line, null, "NUL bytes", "text", mend) : null;
    }

    private static bool IsMarkup(ReadOnlySpan<byte> start)
    {
        ReadOnlySpan<byte> text = start[Math.Max(0, start.IndexOfAnyExcept(Before))..];
        return text.StartsWith("<!DOCTYPE"u8) || text.StartsWith("<html"u8) || text.StartsWith("<HTML"u8) || text.StartsWith("<?xml"u8) || text.StartsWith("<table"u8);
    }
}
