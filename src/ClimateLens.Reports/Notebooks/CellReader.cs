using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using Markdig.Syntax;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ClimateLens.Reports.Notebooks;

/// <summary>Reads one cell of a notebook: <c>name</c> and parameters in TOML.</summary>
internal static class CellReader
{
    /// <summary>The cell; null where it cannot stand, with what is wrong told.</summary>
    /// <param name="fence">The fenced block.</param>
    /// <param name="kind">What the notebook is for.</param>
    /// <param name="file">Its file, for messages.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static CellPart? Read(FencedCodeBlock fence, NotebookKind kind, string file, List<Problem> problems)
    {
        int line = fence.Line + 1, before = problems.Count;
        string body = string.Join('\n', Enumerable.Range(0, fence.Lines.Count).Select(i => fence.Lines.Lines[i].Slice.ToString()));
        DocumentSyntax document = SyntaxParser.Parse(body, validate: true);
        foreach (DiagnosticMessage message in document.Diagnostics)
        {
            problems.Add(NotebookReader.Fault(file, line + 1 + message.Span.Start.Line, message.Message, "TOML: key = value", "write texts in quotes, one key a line."));
        }

        if (problems.Count > before)
        {
            return null;
        }

        Dictionary<string, (object? Value, int Line)> given = [];
        foreach (KeyValueSyntax pair in document.KeyValues)
        {
            given[pair.Key!.ToString().Trim()] = (ValueOf(pair.Value), line + 1 + pair.Span.Start.Line);
        }

        foreach (TableSyntaxBase table in document.Tables)
        {
            problems.Add(NotebookReader.Fault(file, line + 1 + table.Span.Start.Line, "a table", "key = value", "a cell takes single values only."));
        }

        if (!given.TryGetValue("name", out (object? Value, int Line) named) || named.Value is not string name)
        {
            problems.Add(NotebookReader.Fault(file, line, "a cell without a name", "name = \"calendar\"", $"known cells: {string.Join(", ", CellCatalogue.Of(kind).Select(c => c.Name))}."));
            return null;
        }

        if (CellCatalogue.Of(kind).FirstOrDefault(c => c.Name == name) is not { } cell)
        {
            problems.Add(NotebookReader.Fault(file, named.Line, $"the cell \"{Excerpt.Of(name)}\"", "a known cell", NotebookReader.Near(name, CellCatalogue.Of(kind).Select(c => c.Name))));
            return null;
        }

        var values = ImmutableSortedDictionary.CreateBuilder<string, object>(StringComparer.Ordinal);
        foreach ((string key, (object? value, int at)) in given.Where(g => g.Key != "name"))
        {
            if (Checked(cell, key, value, file, at, problems) is object sound)
            {
                values[key] = sound;
            }
        }

        return problems.Count > before ? null : new CellPart(line, name, new CellValues(values.ToImmutable()));
    }

    private static object? Checked(CellInfo cell, string key, object? value, string file, int line, List<Problem> problems)
    {
        if (cell.Parameters.FirstOrDefault(p => p.Name == key) is not { } parameter)
        {
            problems.Add(NotebookReader.Fault(file, line, $"the parameter \"{Excerpt.Of(key)}\" of {cell.Name}", "a known parameter", NotebookReader.Near(key, cell.Parameters.Select(p => p.Name))));
            return null;
        }

        (bool sound, string expected) = parameter.Kind switch
        {
            ParameterKind.Text => (value is string, "a text in quotes"),
            ParameterKind.Flag => (value is bool, "true or false"),
            _ => (value is long number && number >= parameter.Low && number <= parameter.High, $"a whole number from {parameter.Low} to {parameter.High}"),
        };
        if (!sound)
        {
            problems.Add(NotebookReader.Fault(file, line, $"{key} = {Excerpt.Of(value?.ToString() ?? "?")}", expected, $"{key}: {parameter.What}."));
        }

        return sound ? value : null;
    }

    private static object? ValueOf(ValueSyntax? value) => value switch
    {
        StringValueSyntax text => text.Value,
        IntegerValueSyntax number => number.Value,
        BooleanValueSyntax flag => flag.Value,
        _ => null,
    };
}
