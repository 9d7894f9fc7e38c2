using System.Text.Json;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Imports;
using NodaTime.Text;

namespace ClimateLens.Cli.Output;

/// <summary>What an import found in a file, for machines: the keys of the store's sheets (docs/store.md).</summary>
internal static class ImportDetailsJson
{
    /// <summary>Writes the keys of the details; nothing where there are none.</summary>
    public static void Write(Utf8JsonWriter json, ImportDetails? details)
    {
        if (details is null)
        {
            return;
        }

        WriteReasons(json, details);
        WriteNumber(json, "stepSeconds", details.StepSeconds);
        WriteNumber(json, "stepShare", details.StepShare);
        WriteGaps(json, details.Gaps);
        WriteChannels(json, details);
        json.WriteStartArray("unusedColumns");
        foreach (string name in details.UnusedColumns)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
        json.WriteNumber("unusedColumnCount", details.UnusedColumnCount);
        WriteReading(json, details);
        WriteClock(json, details.Clock);
    }

    private static void WriteReasons(Utf8JsonWriter json, ImportDetails details)
    {
        json.WriteStartArray("reasons");
        foreach (SetAsideReason reason in details.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("code", reason.Code);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(reason.Kind.ToString()));
            json.WriteNumber("count", reason.Count);
            json.WriteStartArray("lines");
            foreach (int line in reason.Lines)
            {
                json.WriteNumberValue(line);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteGaps(Utf8JsonWriter json, FileGaps? gaps)
    {
        if (gaps is null)
        {
            json.WriteNull("gaps");
            return;
        }

        json.WriteStartObject("gaps");
        json.WriteNumber("count", gaps.Count);
        json.WriteNumber("missingHours", Math.Round(gaps.MissingHours, 3));
        json.WriteStartArray("longest");
        foreach (FileGap gap in gaps.Longest)
        {
            json.WriteStartObject();
            json.WriteString("after", InstantPattern.ExtendedIso.Format(gap.After));
            json.WriteString("before", InstantPattern.ExtendedIso.Format(gap.Before));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteChannels(Utf8JsonWriter json, ImportDetails details)
    {
        json.WriteStartArray("channels");
        foreach (ChannelSummary channel in details.Channels)
        {
            json.WriteStartObject();
            json.WriteString("channel", channel.Channel);
            json.WriteString("sensor", channel.Sensor);
            json.WriteNumber("count", channel.Count);
            json.WriteNumber("missingShare", channel.MissingShare);
            WriteNumber(json, "min", channel.Min);
            WriteNumber(json, "median", channel.Median);
            WriteNumber(json, "max", channel.Max);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteReading(Utf8JsonWriter json, ImportDetails details)
    {
        json.WriteStartArray("timeFormats");
        foreach (TimeFormatCount format in details.TimeFormats)
        {
            json.WriteStartObject();
            json.WriteString("format", format.Format);
            json.WriteNumber("rows", format.Rows);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("dialect");
        json.WriteString("encoding", details.Dialect.Encoding);
        json.WriteString("delimiter", details.Dialect.Delimiter);
        json.WriteString("quoteChar", details.Dialect.QuoteChar);
        json.WriteString("decimalChar", details.Dialect.DecimalChar);
        json.WriteString("groupChar", details.Dialect.GroupChar);
        json.WriteNumber("headerRow", details.Dialect.HeaderRow);
        json.WriteEndObject();
    }

    private static void WriteClock(Utf8JsonWriter json, ClockCheck? clock)
    {
        if (clock is null)
        {
            json.WriteNull("clock");
            return;
        }

        json.WriteStartObject("clock");
        json.WriteString("verdict", JsonNamingPolicy.CamelCase.ConvertName(clock.Verdict.ToString()));
        json.WriteString("channel", clock.Channel);
        json.WriteString("sensor", clock.Sensor);
        json.WriteNumber("days", clock.Days);
        json.WriteString("sentence", clock.Sentence);
        json.WriteString("mend", clock.Mend);
        WriteNumber(json, "smallestMin", clock.SmallestMin);
        json.WriteStartArray("spells");
        foreach (ClockSpell spell in clock.Spells)
        {
            json.WriteStartObject();
            json.WriteString("from", LocalDatePattern.Iso.Format(spell.From));
            json.WriteString("to", LocalDatePattern.Iso.Format(spell.To));
            json.WriteNumber("days", spell.Days);
            json.WriteNumber("offsetMin", Math.Round(spell.OffsetMin, 1));
            json.WriteNumber("errorMin", Math.Round(spell.ErrorMin, 1));
            json.WriteBoolean("isFault", spell.IsFault);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is double number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
