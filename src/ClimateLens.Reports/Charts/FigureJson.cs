using System.Buffers;
using System.Text;
using System.Text.Json;
using Plotly.NET;

namespace ClimateLens.Reports.Charts;

/// <summary>
/// A chart as the JSON that page.js hands to the drawing library: <c>labels</c> (local name of each hour), <c>data</c>
/// and <c>layout</c>. Hours stand at their middle: <c>x0 = 0.5, dx = 1</c>; an unknown value is null and breaks the line.
/// </summary>
internal static class FigureJson
{
    /// <summary>JSON without any of &lt; &gt; &amp;, so that it can stand in a script element.</summary>
    public static string Write(WeekChart chart)
    {
        GenericChart figure = FigureMaker.Build(chart);
        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter writer = new(buffer))
        {
            writer.WriteStartObject();
            WriteTexts(writer, "labels", chart.HourNames);
            writer.WriteStartArray("data");
            List<HourLine> lines = [.. chart.Panels.SelectMany(p => p.Lines)];
            foreach ((int i, Trace trace) in GenericChart.getTraces(figure).Index())
            {
                WriteTrace(writer, trace, i < lines.Count ? lines[i] : null, chart.Waterings);
            }

            WriteBands(writer, chart);
            writer.WriteEndArray();
            writer.WritePropertyName("layout");
            FigureValue.Write(writer, GenericChart.getLayout(figure));
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void WriteTrace(Utf8JsonWriter writer, Trace trace, HourLine? line, IReadOnlyList<WateringMark> marks)
    {
        writer.WriteStartObject();
        writer.WriteString("type", trace.type);
        foreach ((string key, object? value) in trace.GetProperties(includeInstanceProperties: false))
        {
            if (key is not ("x" or "y" or "marker") && value is not null)
            {
                writer.WritePropertyName(key);
                FigureValue.Write(writer, value);
            }
        }

        if (line is not null)
        {
            WriteHours(writer, line);
        }
        else
        {
            WriteMarks(writer, marks);
        }

        writer.WriteEndObject();
    }

    private static void WriteHours(Utf8JsonWriter writer, HourLine line)
    {
        writer.WriteNumber("x0", 0.5);
        writer.WriteNumber("dx", 1);
        writer.WriteBoolean("connectgaps", false);
        writer.WriteString("hovertemplate", $"%{{text}}<br>{line.Name}: %{{y:.{line.Decimals}f}}<extra></extra>");
        writer.WriteStartArray("y");
        foreach (double? value in line.Values)
        {
            if (value is { } known && double.IsFinite(known))
            {
                writer.WriteNumberValue(Math.Round(known, line.Decimals, MidpointRounding.AwayFromZero));
            }
            else
            {
                writer.WriteNullValue();
            }
        }

        writer.WriteEndArray();
    }

    /// <summary>A filled outline about each line that has a band, one for each stretch without a gap.</summary>
    private static void WriteBands(Utf8JsonWriter writer, WeekChart chart)
    {
        for (int panel = 0; panel < chart.Panels.Count; panel++)
        {
            foreach (HourLine line in chart.Panels[panel].Lines.Where(l => l.Band is > 0))
            {
                (List<double?> x, List<double?> y) = Outline(line);
                writer.WriteStartObject();
                writer.WriteString("type", "scatter");
                writer.WriteString("mode", "lines");
                writer.WriteString("name", "±");
                writer.WriteString("fill", "toself");
                writer.WriteString("fillcolor", line.Colour + "2e");
                writer.WriteString("hoverinfo", "skip");
                writer.WriteStartObject("line");
                writer.WriteNumber("width", 0);
                writer.WriteEndObject();
                writer.WriteString("yaxis", panel == 0 ? "y" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"y{panel + 1}"));
                WriteKnown(writer, "x", x);
                WriteKnown(writer, "y", y);
                writer.WriteEndObject();
            }
        }
    }

    private static (List<double?> X, List<double?> Y) Outline(HourLine line)
    {
        List<double?> x = [], y = [];
        double half = line.Band!.Value;
        for (int i = 0; i < line.Values.Count; i++)
        {
            int from = i;
            while (i < line.Values.Count && line.Values[i] is { } known && double.IsFinite(known))
            {
                i++;
            }

            if (i == from)
            {
                continue;
            }

            if (x.Count > 0)
            {
                x.Add(null);
                y.Add(null);
            }

            int[] there = [.. Enumerable.Range(from, i - from)], back = [.. Enumerable.Range(from, i - from).Reverse()];
            x.AddRange([.. there.Concat(back).Append(from).Select(h => (double?)(h + 0.5))]);
            y.AddRange([.. there.Select(h => line.Values[h] + half), .. back.Select(h => line.Values[h] - half), line.Values[from] + half]);
        }

        return (x, y);
    }

    private static void WriteKnown(Utf8JsonWriter writer, string name, List<double?> numbers)
    {
        writer.WriteStartArray(name);
        foreach (double? number in numbers)
        {
            if (number is { } known)
            {
                writer.WriteNumberValue(Math.Round(known, 3));
            }
            else
            {
                writer.WriteNullValue();
            }
        }

        writer.WriteEndArray();
    }

    private static void WriteMarks(Utf8JsonWriter writer, IReadOnlyList<WateringMark> marks)
    {
        writer.WriteString("hovertemplate", "%{text}<extra></extra>");
        WriteNumbers(writer, "x", marks.Select(m => Math.Round(m.AtHour, 3)));
        WriteNumbers(writer, "y", marks.Select(_ => 0.5));
        WriteTexts(writer, "text", [.. marks.Select(m => m.Label)]);
        writer.WriteStartObject("marker");
        writer.WriteNumber("size", 9);
        WriteTexts(writer, "color", [.. marks.Select(m => m.Late ? Palette.Late : Palette.Watering)]);
        WriteTexts(writer, "symbol", [.. marks.Select(m => m.Late ? "diamond" : "circle-open")]);
        writer.WriteEndObject();
    }

    private static void WriteNumbers(Utf8JsonWriter writer, string name, IEnumerable<double> numbers)
    {
        writer.WriteStartArray(name);
        foreach (double number in numbers)
        {
            writer.WriteNumberValue(number);
        }

        writer.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter writer, string name, IReadOnlyList<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (string text in texts)
        {
            writer.WriteStringValue(text);
        }

        writer.WriteEndArray();
    }
}
