using System.Text;
using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Logs.Describe;

namespace ClimateLens.Cli.Output;

/// <summary>The findings of <c>describe</c> as one JSON object; its keys are listed in docs/describe.md.</summary>
internal static class DescribeJson
{
    /// <summary>Writes the object and a line end.</summary>
    public static void Write(TextWriter output, CommandResult result, Description? description, bool added)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("command", "describe");
            json.WriteNumber("exitCode", result.ExitCode);
            json.WriteNumber("questions", description?.Questions ?? 0);
            json.WriteBoolean("added", added);
            json.WriteString("toml", description?.Toml ?? "");
            json.WriteStartArray("exports");
            foreach (DraftExport export in description is null ? [] : description.Exports)
            {
                WriteExport(json, export);
            }

            json.WriteEndArray();
            JsonResult.WriteProblems(json, result);
            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private static void WriteExport(Utf8JsonWriter json, DraftExport export)
    {
        json.WriteStartObject();
        json.WriteString("name", export.Name);
        json.WriteString("house", export.House);
        json.WriteString("summary", export.Summary);
        json.WriteStartArray("files");
        foreach (string file in export.Files)
        {
            json.WriteStringValue(file);
        }

        json.WriteEndArray();
        WriteKeys(json, "keys", export.Keys);
        WriteKeys(json, "time", export.Time);
        json.WriteStartArray("columns");
        foreach (DraftColumn column in export.Columns)
        {
            json.WriteStartObject();
            json.WriteNumber("position", column.Position);
            json.WriteString("header", column.Header);
            json.WriteString("sureness", SurenessWords.Of(column.Sureness));
            WriteKeys(json, "keys", column.Keys);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteRest(json, export);
        json.WriteEndObject();
    }

    private static void WriteRest(Utf8JsonWriter json, DraftExport export)
    {
        json.WriteStartArray("notUsed");
        foreach (UnusedColumn unused in export.Unused)
        {
            json.WriteStartObject();
            json.WriteNumber("position", unused.Position);
            json.WriteString("header", unused.Header);
            json.WriteString("reason", unused.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("notes");
        foreach (string note in export.Notes)
        {
            json.WriteStringValue(note);
        }

        json.WriteEndArray();
    }

    private static void WriteKeys(Utf8JsonWriter json, string name, IEnumerable<DraftKey> keys)
    {
        json.WriteStartArray(name);
        foreach (DraftKey key in keys)
        {
            json.WriteStartObject();
            json.WriteString("key", key.Key);
            json.WriteString("value", key.IsAsked ? null : key.Values[0]);
            json.WriteStartArray("choices");
            foreach (string value in key.IsAsked ? key.Values : [])
            {
                json.WriteStringValue(value);
            }

            json.WriteEndArray();
            json.WriteString("sureness", key.Sureness is { } sureness ? SurenessWords.Of(sureness) : null);
            json.WriteString("evidence", key.Evidence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
