using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Nursery.Records;

/// <summary>Which fields each kind of record may have. A new field is one line here.</summary>
public static class RecordFields
{
    /// <summary>The field that names the house of a row.</summary>
    public const string House = "house";

    private static readonly RecordField[] Shared = [Text(House), Text("bench"), Text("note"), Text("operator")];

    private static readonly FrozenDictionary<RecordKind, RecordField[]> ByKind = new Dictionary<RecordKind, RecordField[]>
    {
        [RecordKind.Waterings] =
        [
            new("end", RecordFieldType.Time),
            Measure("minutes", Quantity.Duration, "min"),
            new("method", RecordFieldType.Method),
            Measure("litres", Quantity.Volume, "L"),
            .. Shared,
        ],
        [RecordKind.PotChecks] =
        [
            Text("pot"),
            Text("grader"),
            new("level", RecordFieldType.Level),
            Measure("weight", Quantity.Mass),
            Text("leafState"),
            Measure("mediumTemperature", Quantity.Temperature),
            .. Shared,
        ],
        [RecordKind.PlantWidths] = [Text("plant"), Measure("width", Quantity.Length), Measure("height", Quantity.Length), .. Shared],
        [RecordKind.Treatments] =
        [
            Text("what"),
            Text("purpose"),
            Text("activeIngredient"),
            Text("group"),
            Number("rate"),
            Text("rateUnit"),
            Measure("volumePerPot", Quantity.Volume),
            new("reentryUntil", RecordFieldType.Time),
            .. Shared,
        ],
        [RecordKind.Floors] = [Text("what"), Text("activeIngredient"), .. Shared],
        [RecordKind.Tanks] = [Text("tank"), Text("what"), Number("reading"), Text("readingUnit"), .. Shared],
        [RecordKind.Scouting] = [Text("symptom"), Number("count"), .. Shared],
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<(RecordKind, string), RecordField> ByName = ByKind
        .SelectMany(pair => pair.Value.Select(field => (Key: (pair.Key, field.Name), field)))
        .ToFrozenDictionary(pair => pair.Key, pair => pair.field);

    /// <summary>The fields of a kind, its own first, in the order in which pages list them.</summary>
    public static IReadOnlyList<RecordField> Of(RecordKind kind) => ByKind[kind];

    /// <summary>Finds a field of a kind by its exact name.</summary>
    public static bool TryGet(RecordKind kind, string name, [NotNullWhen(true)] out RecordField? field)
        => ByName.TryGetValue((kind, name), out field);

    private static RecordField Text(string name) => new(name, RecordFieldType.Text);

    private static RecordField Number(string name) => new(name, RecordFieldType.Number);

    private static RecordField Measure(string name, Quantity quantity, string? defaultUnit = null)
        => new(name, RecordFieldType.Number, quantity) { DefaultUnit = defaultUnit };
}
