using System.Text;
using ClimateLens.Nursery.Settings.Reading;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ClimateLens.Nursery.Settings.Editing;

/// <summary>Puts [[export]] tables into the text of a nursery file and changes nothing else: remarks, order, line ends and byte order mark stay.</summary>
public static class ExportInsertion
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file with the tables behind its last [[export]], or at its end when it has none.</summary>
    /// <param name="fileName">The file's name as the user gave it, for messages.</param>
    /// <param name="nursery">The file's bytes.</param>
    /// <param name="exports">The tables, lines ending in LF.</param>
    /// <param name="fileExists">As in <see cref="NurseryFile.Parse"/>.</param>
    /// <exception cref="Problems.NurseryFileException">The file cannot be read, or could not be with the tables in it: a name that its house has already, a house that is not there.</exception>
    public static byte[] Insert(string fileName, ReadOnlyMemory<byte> nursery, string exports, Func<string, bool>? fileExists = null)
    {
        ArgumentNullException.ThrowIfNull(exports);
        FaultList faults = new(fileName);
        if (TomlSource.Decode(nursery.Span, faults) is not { } text)
        {
            throw new Problems.NurseryFileException(faults.InFileOrder());
        }

        string lineEnd = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        int at = EndOfExports(text);
        string before = text[..at];
        string gap = before.Length == 0 || before.EndsWith('\n') ? lineEnd : lineEnd + lineEnd;
        string after = text[at..];
        string behind = after.Trim().Length > 0 && !StartsBlank(after) ? lineEnd : "";
        string edited = before + gap + exports.Replace("\n", lineEnd, StringComparison.Ordinal) + behind + after;
        byte[] bytes = Utf8.GetBytes(edited);
        byte[] whole = nursery.Span.StartsWith("\uFEFF"u8) ? [.. "\uFEFF"u8, .. bytes] : bytes;
        NurseryFile.Parse(fileName, whole, fileExists);
        return whole;
    }

    private static bool StartsBlank(string after) => after.TrimStart(' ', '\t', '\r') is ['\n', ..];

    /// <summary>Behind the line that ends the last table of an export; the end of the text when there is none.</summary>
    private static int EndOfExports(string text)
    {
        DocumentSyntax document = SyntaxParser.Parse(text, validate: false);
        int last = -1;
        foreach (TableSyntaxBase table in document.Tables)
        {
            if (table.Name is { } name && TomlValues.PathOf(name) is [("export", _), ..])
            {
                KeyValueSyntax? item = table.Items.LastOrDefault();
                last = item is null ? table.Span.End.Offset : item.Span.End.Offset;
            }
        }

        if (last < 0)
        {
            return text.Length;
        }

        int lineEnd = text.IndexOf('\n', Math.Min(last, text.Length));
        return lineEnd < 0 ? text.Length : BehindRemarks(text, lineEnd + 1);
    }

    /// <summary>Behind the remarks that follow a table and belong to it: up to an empty line or the end, not those straight above another table.</summary>
    private static int BehindRemarks(string text, int from)
    {
        for (int end = from; ;)
        {
            int start = StartsBlank(text[end..]) && FirstRemark(text, end) is { } first ? first : end, at = start;
            while (at < text.Length && text[at..].TrimStart(' ', '\t') is ['#', ..])
            {
                int lineEnd = text.IndexOf('\n', at);
                at = lineEnd < 0 ? text.Length : lineEnd + 1;
            }

            if (at == start || (at < text.Length && !StartsBlank(text[at..])))
            {
                return end;
            }

            end = at;
        }
    }

    /// <summary>The remark behind one empty line, where it is indented as a part of the table; null for any other line.</summary>
    private static int? FirstRemark(string text, int from)
    {
        int next = text.IndexOf('\n', from) + 1;
        return next < text.Length && text[next] is ' ' or '\t' && text[next..].TrimStart(' ', '\t') is ['#', ..] ? next : null;
    }
}
