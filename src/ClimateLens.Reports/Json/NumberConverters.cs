using System.Text.Json;
using System.Text.Json.Serialization;

namespace ClimateLens.Reports.Json;

/// <summary>Numbers that must be known: shortened, and never NaN or infinite, which would be a bug of the analysis.</summary>
internal sealed class NumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (!double.IsFinite(value))
        {
            throw new InvalidOperationException($"A review holds {value} where a number is required.");
        }

        writer.WriteNumberValue(Rounding.Shorten(value));
    }
}

/// <summary>Numbers that may be unknown: NaN and infinity become null, as every unknown in review.json.</summary>
internal sealed class OptionalNumberConverter : JsonConverter<double?>
{
    public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
    {
        if (value is { } known && double.IsFinite(known))
        {
            writer.WriteNumberValue(Rounding.Shorten(known));
        }
        else
        {
            writer.WriteNullValue();
        }
    }
}
