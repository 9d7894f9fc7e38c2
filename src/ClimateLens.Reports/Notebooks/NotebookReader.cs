using System.Collections.Immutable;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using Markdig;
using Markdig.Extensions.Yaml;
using Markdig.Syntax;

namespace ClimateLens.Reports.Notebooks;

/// <summary>
/// Reads a notebook: front matter between lines of <c>---</c> with <c>title</c> and <c>for</c>, then Markdown in which fenced blocks marked <c>cell</c> name a cell and give its parameters in TOML.
/// What is wrong is told all at once, with file and line.
/// </summary>
public static class NotebookReader
{
    /// <summary>Longest text of a notebook. [characters]</summary>
    public const int MostCharacters = 200_000;

    private const string FrontMatterMend = "begin the file with --- then title: … and for: house week (or houses week, house season), then --- again.";

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UseYamlFrontMatter().UsePreciseSourceLocation().Build();

    /// <summary>Words for what a notebook is for.</summary>
    public static ImmutableSortedDictionary<string, NotebookKind> Kinds { get; } = new Dictionary<string, NotebookKind>
    {
        ["house week"] = NotebookKind.HouseWeek,
        ["houses week"] = NotebookKind.HousesWeek,
        ["house season"] = NotebookKind.HouseSeason,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Reads a notebook.</summary>
    /// <param name="name">Its file's name without the ending.</param>
    /// <param name="file">Its file, for messages.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The notebook, null where it cannot stand, and all that is wrong with it.</returns>
    public static (Notebook? Notebook, ImmutableArray<Problem> Problems) Read(string name, string file, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<Problem> problems = [];
        if (text.Length > MostCharacters)
        {
            return (null, [Fault(file, 1, $"{text.Length} characters", $"up to {MostCharacters}", "split the notebook.")]);
        }

        if (name.Length == 0 || name.Any(c => !char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_')))
        {
            problems.Add(Fault(file, 1, $"the name \"{Excerpt.Of(name)}\"", "letters, digits, '-' and '_'", "rename the file: its name becomes that of the page."));
        }

        text = text.Replace("\r\n", "\n", StringComparison.Ordinal).TrimStart('\uFEFF');
        MarkdownDocument document = Markdown.Parse(text, Pipeline);
        (string title, NotebookKind? kind) = FrontMatter(document, file, problems);
        ImmutableArray<NotebookPart> parts = [.. Parts(document, text, kind ?? NotebookKind.HouseWeek, file, problems)];
        if (kind is not null && parts.IsEmpty)
        {
            problems.Add(Fault(file, 1, "no text and no cell", "at least one", "add a fenced block marked cell, with name = \"…\" in it."));
        }

        if (kind is null || problems.Any(p => p.Severity == Severity.Error))
        {
            return (null, [.. problems]);
        }

        string hash = Digest.OfText(text);
        return (new Notebook(name, file, title, kind.Value, parts) { Hash = hash }, [.. problems]);
    }

    private static (string Title, NotebookKind? Kind) FrontMatter(MarkdownDocument document, string file, List<Problem> problems)
    {
        if (document.FirstOrDefault() is not YamlFrontMatterBlock block)
        {
            problems.Add(Fault(file, 1, "no front matter", "title and for", FrontMatterMend));
            return ("", null);
        }

        string title = "";
        NotebookKind? kind = null;
        for (int i = 0; i < block.Lines.Count; i++)
        {
            string line = block.Lines.Lines[i].Slice.ToString().Trim();
            int number = block.Line + 2 + i, colon = line.IndexOf(':', StringComparison.Ordinal);
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            (string key, string value) = colon < 0 ? (line, "") : (line[..colon].Trim(), line[(colon + 1)..].Trim().Trim('"'));
            switch (key)
            {
                case "title":
                    title = value;
                    break;
                case "for" when Kinds.TryGetValue(value, out NotebookKind known):
                    kind = known;
                    break;
                case "for":
                    problems.Add(Fault(file, number, $"for: {Excerpt.Of(value)}", string.Join(", ", Kinds.Keys), Near(value, Kinds.Keys)));
                    break;
                default:
                    problems.Add(Fault(file, number, $"the key \"{Excerpt.Of(key)}\"", "title or for", Near(key, ["title", "for"])));
                    break;
            }
        }

        if (title.Length == 0)
        {
            problems.Add(Fault(file, block.Line + 1, "no title", "title: …", FrontMatterMend));
        }

        if (kind is null && !problems.Exists(p => p.Found.StartsWith("for:", StringComparison.Ordinal)))
        {
            problems.Add(Fault(file, block.Line + 1, "no for", $"for: {string.Join(", or for: ", Kinds.Keys)}", FrontMatterMend));
        }

        return (title, kind);
    }

    /// <summary>Prose between cells stays as it was written; each cell is read.</summary>
    private static IEnumerable<NotebookPart> Parts(MarkdownDocument document, string text, NotebookKind kind, string file, List<Problem> problems)
    {
        int? from = null, until = 0, line = 1;
        foreach (Block block in document.Where(b => b is not YamlFrontMatterBlock))
        {
            if (block is not FencedCodeBlock { Info: "cell" } fence)
            {
                from ??= block.Span.Start;
                line = from == block.Span.Start ? block.Line + 1 : line;
                until = block.Span.End + 1;
                continue;
            }

            if (from is int start)
            {
                yield return Prose(line!.Value, text[start..until!.Value], file, problems);
                from = null;
            }

            if (CellReader.Read(fence, kind, file, problems) is CellPart cell)
            {
                yield return cell;
            }
        }

        if (from is int rest)
        {
            yield return Prose(line!.Value, text[rest..until!.Value], file, problems);
        }
    }

    private static ProsePart Prose(int line, string markdown, string file, List<Problem> problems)
    {
        problems.AddRange(ProseValues.Check(markdown).Select(p => Fault(file, line + p.Line, p.Found, "{{ name }} or {{ name | round: 1 }}", p.Mend)));
        return new ProsePart(line, markdown);
    }

    internal static Problem Fault(string file, int line, string found, string expected, string mend)
        => new("notebook.fault", Severity.Error, file, line, null, found, expected, mend);

    internal static string Near(string written, IEnumerable<string> known)
    {
        string[] names = [.. known];
        return NearestName.Of(written, names) is string near ? $"did you mean \"{near}\"?" : $"known are {string.Join(", ", names)}.";
    }
}
