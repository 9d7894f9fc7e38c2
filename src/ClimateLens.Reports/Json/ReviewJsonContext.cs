using System.Text.Json.Serialization;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Reports.Json;

/// <summary>The compile-time serialiser of a review: keys in the order of the records, in camelCase.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    WriteIndented = true,
    NewLine = "\n",
    Converters = [typeof(NumberConverter), typeof(OptionalNumberConverter), typeof(TimeConverter), typeof(DateConverter), typeof(MethodConverter)])]
[JsonSerializable(typeof(Review))]
internal sealed partial class ReviewJsonContext : JsonSerializerContext;

/// <summary>Watering methods by the names that files use, for example <c>overheadBoom</c>.</summary>
internal sealed class MethodConverter() : JsonStringEnumConverter<WateringMethod>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);
