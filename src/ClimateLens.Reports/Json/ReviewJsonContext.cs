using System.Text.Json.Serialization;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Treatments;

namespace ClimateLens.Reports.Json;

/// <summary>The compile-time serialiser of a review: keys in the order of the records, in camelCase.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    WriteIndented = true,
    NewLine = "\n",
    Converters = [typeof(NumberConverter), typeof(OptionalNumberConverter), typeof(TimeConverter), typeof(DateConverter), typeof(MethodConverter), typeof(VerdictConverter), typeof(SetAsideKindConverter), typeof(LeafSignConverter), typeof(ResistanceRiskConverter)])]
[JsonSerializable(typeof(Review))]
[JsonSerializable(typeof(ComparisonReport))]
internal sealed partial class ReviewJsonContext : JsonSerializerContext;

/// <summary>Watering methods by the names that files use, for example <c>overheadBoom</c>.</summary>
internal sealed class MethodConverter() : JsonStringEnumConverter<WateringMethod>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);

/// <summary>Verdicts on clocks by their names, for example <c>notKnown</c>.</summary>
internal sealed class VerdictConverter() : JsonStringEnumConverter<ClockVerdict>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);

/// <summary>What a reason took away, for example <c>row</c>.</summary>
internal sealed class SetAsideKindConverter() : JsonStringEnumConverter<SetAsideKind>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);

/// <summary>States of leaves, for example <c>severeFlagging</c>.</summary>
internal sealed class LeafSignConverter() : JsonStringEnumConverter<LeafSign>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);

/// <summary>Risks of resistance, for example <c>notKnown</c>.</summary>
internal sealed class ResistanceRiskConverter() : JsonStringEnumConverter<ResistanceRisk>(System.Text.Json.JsonNamingPolicy.CamelCase, allowIntegerValues: false);
