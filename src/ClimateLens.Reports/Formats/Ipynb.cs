using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Pages;

namespace ClimateLens.Reports.Formats;

/// <summary>
/// A page as a Jupyter notebook (nbformat 4.5, an open format): headings and sentences as Markdown, and for each cell code that reads the
/// data files beside it with pandas, with what the page shows as its output.
/// </summary>
internal static partial class Ipynb
{
    private const string Style =
        "<style>.climatelens table{border-collapse:collapse;font-size:.85em}.climatelens th,.climatelens td{text-align:left;padding:.15em .5em .15em 0}"
        + ".climatelens .calendar td{text-align:center;min-width:1.6em}.climatelens .r1{background:#fbe3d3}.climatelens .r2{background:#ee9f6b}.climatelens .r3{background:#a8400a;color:#fff}"
        + ".climatelens .n{border-bottom:3px solid #4a5a70}.climatelens .vh{display:none}.climatelens svg{max-width:100%}</style>";

    /// <summary>The file: UTF-8, equal pages give equal bytes.</summary>
    /// <param name="title">Title of the page.</param>
    /// <param name="under">What stands under it.</param>
    /// <param name="parts">Parts of the page.</param>
    public static byte[] Write(string title, string under, IEnumerable<BodyPart> parts)
    {
        JsonArray cells = [Markdown("title", $"# {Plain(title)}\n\n{Plain(under)}")];
        int number = 0;
        foreach (BodyPart part in parts)
        {
            number++;
            if (part.Prose is { } prose)
            {
                cells.Add(Markdown($"prose-{number}", prose));
                continue;
            }

            cells.Add(Markdown($"{part.Name}-{number}-text", $"## {Plain(part.Heading)}\n\n{Plain(part.Content?.Sentence ?? Phrase.Of("This part could not be made."))}"));
            if (part.Content is { Body.IsEmpty: false } content)
            {
                cells.Add(Code($"{part.Name}-{number}", part.Files, content));
            }
        }

        JsonObject file = new()
        {
            ["cells"] = cells,
            ["metadata"] = new JsonObject
            {
                ["kernelspec"] = new JsonObject { ["name"] = "python3", ["display_name"] = "Python 3" },
                ["language_info"] = new JsonObject { ["name"] = "python" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
        return Encoding.UTF8.GetBytes(file.ToJsonString(Indented) + "\n");
    }

    private static readonly JsonSerializerOptions Indented = new(JsonSerializerOptions.Default) { WriteIndented = true, NewLine = "\n", IndentSize = 1 };

    private static JsonObject Markdown(string id, string text)
        => new() { ["id"] = id, ["cell_type"] = "markdown", ["metadata"] = new JsonObject(), ["source"] = text };

    private static JsonObject Code(string id, IReadOnlyList<string> files, CellContent content)
    {
        string html = content.Body.ToString();
        JsonArray outputs = [];
        foreach (Match chart in Charts().Matches(html))
        {
            outputs.Add(Output(new JsonObject { ["application/vnd.plotly.v1+json"] = Figure(chart.Groups[2].Value), ["text/plain"] = System.Net.WebUtility.HtmlDecode(chart.Groups[1].Value) }));
        }

        string rest = Charts().Replace(html, "");
        if (rest.Contains("<table", StringComparison.Ordinal) || rest.Contains("<p", StringComparison.Ordinal) || rest.Contains("<svg", StringComparison.Ordinal) || rest.Contains("<li", StringComparison.Ordinal) || rest.Contains("<d", StringComparison.Ordinal))
        {
            outputs.Add(Output(new JsonObject { ["text/html"] = $"<div class=\"climatelens\">{Style}\n{rest}</div>", ["text/plain"] = content.Sentence }));
        }

        return new JsonObject
        {
            ["id"] = id,
            ["cell_type"] = "code",
            ["execution_count"] = null,
            ["metadata"] = new JsonObject(),
            ["outputs"] = outputs,
            ["source"] = Source(files),
        };
    }

    private static JsonObject Output(JsonObject data) => new() { ["output_type"] = "display_data", ["data"] = data, ["metadata"] = new JsonObject() };

    private static string Source(IReadOnlyList<string> files)
    {
        string[] tables = [.. files.Where(f => f.EndsWith(".csv", StringComparison.Ordinal))];
        return tables.Length == 0
            ? "import json\nreview = json.load(open(\"review.json\", encoding=\"utf-8\"))"
            : "import pandas as pd\n" + string.Join('\n', tables.Select(f => $"{Variable(f)} = pd.read_csv(\"{f}\")")) + $"\n{Variable(tables[0])}";
    }

    private static string Variable(string file) => file[..^".csv".Length].Replace('-', '_');

    /// <summary>The figure with each hour's name at its point.</summary>
    private static JsonObject Figure(string json)
    {
        JsonObject figure = JsonNode.Parse(json)!.AsObject();
        JsonNode labels = figure["labels"]!;
        foreach (JsonObject trace in figure["data"]!.AsArray().Select(t => t!.AsObject()).Where(t => !t.ContainsKey("text")))
        {
            trace["text"] = labels.DeepClone();
        }

        return new JsonObject { ["data"] = figure["data"]!.DeepClone(), ["layout"] = figure["layout"]!.DeepClone() };
    }

    /// <summary>Text that Markdown takes as text: a name of a user cannot become a link or a tag.</summary>
    private static string Plain(string text) => Special().Replace(text, @"\$0").Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);

    [GeneratedRegex("""<div class="plot [^>]*aria-label="([^"]*)"[^>]*></div>\n<script type="application/json"[^>]*>(.*?)</script>\n<p class="note undrawn">.*?</p>""", RegexOptions.Singleline)]
    private static partial Regex Charts();

    [GeneratedRegex(@"[\\`*_{}\[\]()#+!|>~$]")]
    private static partial Regex Special();
}
