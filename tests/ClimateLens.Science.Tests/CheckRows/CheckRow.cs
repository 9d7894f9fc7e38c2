using System.Text.Json;

namespace ClimateLens.Science.Tests.CheckRows;

/// <summary>One published value, with the inputs, tolerance and source that belong to it.</summary>
internal sealed record CheckRow(string File, int Index, JsonElement Json)
{
    public string Quantity => Json.GetProperty("quantity").GetString()!;

    public string Formula => Json.TryGetProperty("formula", out JsonElement formula) ? formula.GetString()! : "";

    public string Source => Json.GetProperty("source").GetString()!;

    public string Unit => Json.GetProperty("unit").GetString()!;

    public double Expected => Json.GetProperty("expected").GetDouble();

    public double Tolerance => Json.GetProperty("tolerance").GetDouble();

    public JsonElement Inputs => Json.GetProperty("inputs");

    public bool Has(string input) => Inputs.TryGetProperty(input, out _);

    public double Input(string input) => Inputs.GetProperty(input).GetDouble();

    public string Text(string input) => Inputs.GetProperty(input).GetString()!;

    public double Number(string key) => Json.GetProperty(key).GetDouble();

    public override string ToString() =>
        $"{File} row {Index + 1}: {Json}";

    public static IReadOnlyList<CheckRow> Of(string file)
    {
        using Stream stream = typeof(CheckRow).Assembly.GetManifestResourceStream(file + ".json")
            ?? throw new InvalidOperationException($"No check rows named {file}.");
        using JsonDocument document = JsonDocument.Parse(stream);
        return [.. document.RootElement.EnumerateArray().Select((row, i) => new CheckRow(file, i, row.Clone()))];
    }

    public static TheoryData<int, string> Theory(string file, Func<CheckRow, bool>? which = null)
    {
        var data = new TheoryData<int, string>();
        foreach (CheckRow row in Of(file).Where(which ?? (_ => true)))
        {
            data.Add(row.Index, Label(row));
        }

        return data;
    }

    private static string Label(CheckRow row) =>
        row.Json.TryGetProperty("source", out JsonElement source)
            ? $"{row.Quantity} {row.Formula} [{source.GetString()}]"
            : "computed by a separate program";
}
