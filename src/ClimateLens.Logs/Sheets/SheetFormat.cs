using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Logs.Sheets;

/// <summary>Sheets as JSON: keys in the order of the records, numbers in full, times ISO 8601 in UTC, one line end at the end.</summary>
[JsonSourceGenerationOptions(
    WriteIndented = true,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    NewLine = "\n",
    Converters = [typeof(InstantConverter), typeof(LocalDateConverter), typeof(VerdictConverter), typeof(KindConverter)])]
[JsonSerializable(typeof(SheetFile))]
internal sealed partial class SheetFormat : JsonSerializerContext;

/// <summary>Writes and reads sheets.</summary>
internal static class SheetJson
{
    // Letters of every script stay readable.
    private static readonly SheetFormat Plain = new(new JsonSerializerOptions(SheetFormat.Default.Options!) { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) });

    /// <summary>Writes a sheet.</summary>
    public static byte[] Write(SheetFile sheet) => [.. JsonSerializer.SerializeToUtf8Bytes(sheet, Plain.SheetFile), (byte)'\n'];

    /// <summary>Reads the details of a sheet; null when it is damaged or of another format.</summary>
    public static ImportDetails? Read(byte[] json)
    {
        try
        {
            SheetFile? sheet = JsonSerializer.Deserialize(json, Plain.SheetFile);
            return sheet is { Format: SheetFile.CurrentFormat } ? sheet.Details : null;
        }
        catch (Exception e) when (e is JsonException or UnparsableValueException)
        {
            return null;
        }
    }
}

/// <summary>Moments as <c>2025-10-13T14:05:00Z</c>.</summary>
internal sealed class InstantConverter : JsonConverter<Instant>
{
    public override Instant Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => InstantPattern.ExtendedIso.Parse(reader.GetString() ?? "").GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, Instant value, JsonSerializerOptions options)
        => writer.WriteStringValue(InstantPattern.ExtendedIso.Format(value));
}

/// <summary>Days as <c>2025-10-13</c>.</summary>
internal sealed class LocalDateConverter : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => LocalDatePattern.Iso.Parse(reader.GetString() ?? "").GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options)
        => writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}

/// <summary>Verdicts by their names.</summary>
internal sealed class VerdictConverter() : JsonStringEnumConverter<ClockVerdict>(JsonNamingPolicy.CamelCase, allowIntegerValues: false);

/// <summary>Kinds by their names.</summary>
internal sealed class KindConverter() : JsonStringEnumConverter<SetAsideKind>(JsonNamingPolicy.CamelCase, allowIntegerValues: false);
