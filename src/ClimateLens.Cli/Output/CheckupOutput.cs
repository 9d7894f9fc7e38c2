using System.Collections.Immutable;
using System.Text.Json;
using ClimateLens.Logs.Health;

namespace ClimateLens.Cli.Output;

/// <summary>What <c>doctor</c> found, for people and for machines.</summary>
internal static class CheckupOutput
{
    /// <summary>A line each; where someone should look, what to do on a second one.</summary>
    public static void WriteText(TextWriter output, ImmutableArray<CheckupLine> lines)
    {
        foreach (CheckupLine line in lines)
        {
            output.WriteLine(Messages.Plain($"{(line.IsFine ? "fine" : "LOOK")}  {line.Text} [{line.Code}]"));
            if (!line.IsFine)
            {
                output.WriteLine(Messages.Plain($"      {line.Mend}"));
            }
        }
    }

    /// <summary>The array <c>checks</c>.</summary>
    public static void WriteJson(Utf8JsonWriter json, ImmutableArray<CheckupLine> lines)
    {
        json.WriteStartArray("checks");
        foreach (CheckupLine line in lines)
        {
            json.WriteStartObject();
            json.WriteString("code", line.Code);
            json.WriteBoolean("fine", line.IsFine);
            json.WriteString("text", line.Text);
            json.WriteString("mend", line.Mend);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
