using ClimateLens.Nursery.Problems;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>
/// Reads the syntax tree of a file that may have slips. The first slip is noted, its statement blanked out and the
/// rest read again, so that one forgotten quote hides nothing that stands below it.
/// </summary>
internal static class SyntaxRecovery
{
    private const int MostSlips = 25;

    /// <summary>The tree of all that can be read; slips are in the list.</summary>
    public static DocumentSyntax? Read(string text, FaultList faults)
    {
        SourceLines lines = new(text);
        for (int slip = 0; slip < MostSlips; slip++)
        {
            DocumentSyntax document;
            try
            {
                document = SyntaxParser.Parse(lines.Text, validate: false);
            }
            catch (TomlException fault)
            {
                TooDeep(lines, faults, fault);
                return null;
            }

            DiagnosticMessage? first = document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).MinBy(d => d.Span.Start.Offset);
            if (first is null)
            {
                return document;
            }

            TextPosition at = first.Span.Start;
            int statement = StatementLine(document, at);
            Report(lines, faults, at.Line, at.Column, first.Message, statement);
            if (!lines.Blank(statement))
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>The parser gives up without a place when lists or tables are nested too deep.</summary>
    private static void TooDeep(SourceLines lines, FaultList faults, TomlException fault)
    {
        faults.PartUnread = true;
        Place at = new(fault.Line ?? lines.DeepestLine() + 1, fault.Column ?? 1);
        faults.Error(FaultCodes.Syntax, at, $"cannot read: {Excerpt.Of(lines[at.Line - 1].Trim())}", "", $"close the brackets that are open here ({Excerpt.Of(fault.Message)}).");
    }

    private static void Report(SourceLines lines, FaultList faults, int line, int column, string message, int? statement = null)
    {
        faults.PartUnread = true;
        string source = lines[statement ?? line].Trim();
        string plain = Excerpt.Of(message.Replace('␤', ' ').Replace('`', '\''));
        string mend = SyntaxHints.For(source, statement < line) ?? $"compare the line with docs/nursery-file.md ({plain}).";
        faults.Error(FaultCodes.Syntax, new Place(line + 1, column + 1), $"cannot read: {Excerpt.Of(source)}", "", mend);
    }

    /// <summary>The line (0-based) in which the statement begins that a slip belongs to.</summary>
    private static int StatementLine(DocumentSyntax document, TextPosition slip)
    {
        (int Offset, int Line, int? End) last = Statements(document).Where(s => s.Offset <= slip.Offset).DefaultIfEmpty().MaxBy(s => s.Offset);
        bool runsOn = last.End is null || last.End >= slip.Offset;
        return runsOn && last != default ? last.Line : slip.Line;
    }

    private static IEnumerable<(int Offset, int Line, int? End)> Statements(DocumentSyntax document)
    {
        foreach (KeyValueSyntax pair in document.KeyValues)
        {
            yield return Of(pair, pair.EndOfLineToken);
        }

        foreach (TableSyntaxBase table in document.Tables)
        {
            yield return Of(table, table.EndOfLineToken);
            foreach (KeyValueSyntax pair in table.Items)
            {
                yield return Of(pair, pair.EndOfLineToken);
            }
        }
    }

    private static (int Offset, int Line, int? End) Of(SyntaxNode node, SyntaxToken? end)
        => (node.Span.Start.Offset, node.Span.Start.Line, end?.Span.Start.Offset);
}
