using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Reports.Json;

/// <summary>Times as ISO 8601 with their offset in full: <c>2025-10-13T00:00:00+01:00</c>; fractions of a second only where there are some.</summary>
internal sealed class TimeConverter : JsonConverter<OffsetDateTime>
{
    public static readonly OffsetDateTimePattern Pattern =
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss;FFFFFFFFFo<+HH:mm>");

    public override OffsetDateTime Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => Pattern.Parse(reader.GetString() ?? "").GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, OffsetDateTime value, JsonSerializerOptions options)
        => writer.WriteRawValue($"\"{Pattern.Format(value)}\""); // raw: the encoder would write the plus sign as \u002B
}

/// <summary>Dates as ISO 8601: <c>2025-10-13</c>.</summary>
internal sealed class DateConverter : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => LocalDatePattern.Iso.Parse(reader.GetString() ?? "").GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options)
        => writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}
