using System.Collections;
using System.Text.Json;
using Plotly.NET;

namespace ClimateLens.Reports.Charts;

/// <summary>
/// An attribute of a figure of Plotly.NET as JSON. The package's own serialiser finds its way by reflection, which costs a page tens of
/// milliseconds and is not there in a program that is machine code as a whole.
/// </summary>
internal static class FigureValue
{
    /// <summary>Writes text, number, switch, list, or an object of attributes.</summary>
    /// <exception cref="NotSupportedException">It is of another kind.</exception>
    public static void Write(Utf8JsonWriter writer, object? value)
    {
        switch (value)
        {
            case null:
                writer.WriteNullValue();
                break;
            case string text:
                writer.WriteStringValue(text);
                break;
            case bool on:
                writer.WriteBooleanValue(on);
                break;
            case int number:
                writer.WriteNumberValue(number);
                break;
            case double number:
                writer.WriteNumberValue(number);
                break;
            case Color colour:
                Write(writer, colour.Value);
                break;
            case DynamicObj.DynamicObj attributes:
                WriteObject(writer, attributes.GetProperties(includeInstanceProperties: false));
                break;
            case IReadOnlyDictionary<string, object> attributes:
                WriteObject(writer, attributes);
                break;
            case IEnumerable list:
                writer.WriteStartArray();
                foreach (object? item in list)
                {
                    Write(writer, item);
                }

                writer.WriteEndArray();
                break;
            default:
                throw new NotSupportedException($"An attribute of a figure is of type {value.GetType()}, which is not known here.");
        }
    }

    private static void WriteObject(Utf8JsonWriter writer, IEnumerable<KeyValuePair<string, object>> attributes)
    {
        writer.WriteStartObject();
        foreach ((string name, object? value) in attributes)
        {
            writer.WritePropertyName(name);
            Write(writer, value);
        }

        writer.WriteEndObject();
    }
}
