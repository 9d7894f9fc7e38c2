using System.Text.Json;
using ClimateLens.Cli.Commands;
using ClimateLens.Logs.SetAside;

namespace ClimateLens.Cli.Output;

/// <summary>What was set aside, for machines; keys in docs/command-line.md.</summary>
internal static class SetAsideJson
{
    /// <summary>Writes the key <c>setAside</c>.</summary>
    public static void Write(Utf8JsonWriter json, SetAsideListing listing)
    {
        json.WriteStartObject("setAside");
        json.WriteStartArray("files");
        foreach (SetAsideCounts file in listing.Files)
        {
            json.WriteStartObject();
            WriteName(json, file.File);
            json.WriteBoolean("older", file.File.IsOlder);
            json.WriteBoolean("lost", file.File.IsLost);
            json.WriteStartArray("reasons");
            foreach ((string code, int count) in file.Reasons)
            {
                ProblemCode? reason = SetAsideCounts.Explained(code);
                json.WriteStartObject();
                json.WriteString("code", code);
                json.WriteNumber("count", count);
                json.WriteString("meaning", reason?.Meaning ?? "");
                json.WriteString("mend", reason?.Mend ?? "");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteRows(json, listing);
        json.WriteNumber("rowsLeftOff", listing.LeftOff);
        json.WriteNumber("olderFilesLeftOut", listing.OlderFiles);
        json.WriteEndObject();
    }

    private static void WriteRows(Utf8JsonWriter json, SetAsideListing listing)
    {
        json.WriteStartArray("rows");
        foreach ((SetAsideFile file, SetAsideRow row) in listing.Rows)
        {
            json.WriteStartObject();
            WriteName(json, file);
            json.WriteNumber("line", row.Line);
            if (row.Column is int column)
            {
                json.WriteNumber("column", column);
            }
            else
            {
                json.WriteNull("column");
            }

            json.WriteString("code", row.Code);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(row.Kind.ToString()));
            json.WriteString("found", row.Found);
            json.WriteString("expected", row.Expected);
            json.WriteString("text", row.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteName(Utf8JsonWriter json, SetAsideFile file)
    {
        json.WriteString("file", file.File);
        json.WriteString("house", file.House);
        json.WriteString("kindOfRecord", file.Kind);
        json.WriteString("source", file.Source);
    }
}
