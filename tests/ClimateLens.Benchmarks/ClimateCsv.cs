using System.Buffers.Text;
using System.Globalization;
using System.Text;
using NodaTime;

namespace ClimateLens.Benchmarks;

/// <summary>
/// Writes an invented climate computer's export: a local stamp with the clock changes of its zone, and eleven channels
/// that follow day and season with some noise. The same rows every time.
/// </summary>
internal static class ClimateCsv
{
    private const string Zone = "Europe/London";

    /// <summary>Channel, unit, decimals, mean, half its daily swing and its noise.</summary>
    private static readonly (string Channel, string Unit, int Decimals, double Mean, double Swing, double Noise)[] Channels =
    [
        ("airTemperature", "Cel", 2, 20, 5, 0.6),
        ("relativeHumidity", "%", 1, 75, 14, 3),
        ("leafTemperature", "Cel", 2, 19.5, 6, 0.8),
        ("canopyTemperature", "Cel", 2, 19.8, 4.5, 0.5),
        ("carbonDioxide", "[ppm]", 1, 620, 180, 25),
        ("insideRadiation", "W/m2", 1, 180, 178, 20),
        ("ventPosition", "%", 1, 35, 34, 4),
        ("screenPosition", "%", 0, 50, 49, 1),
        ("heatingPipeTemperature", "Cel", 1, 42, 12, 1.5),
        ("outsideTemperature", "Cel", 2, 11, 6, 0.4),
        ("globalRadiation", "W/m2", 1, 330, 329, 60),
    ];

    /// <summary>A nursery file of one house that reads <c>exports/*.csv</c>, or of several, each of which reads <c>exports/house-ID.csv</c>.</summary>
    public static string NurseryFile(int houses = 1)
    {
        var text = new StringBuilder($"""
            [nursery]
            name = "Benchmark"
            timeZone = "{Zone}"
            latitude = 53.2
            longitude = -0.6
            elevationM = 18


            """);
        for (int house = 1; house <= houses; house++)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[house]]\nid = \"{house}\"\nname = \"House {house}\"\n\n");
        }

        for (int house = 1; house <= houses; house++)
        {
            string files = houses == 1 ? "exports/*.csv" : string.Create(CultureInfo.InvariantCulture, $"exports/house-{house}.csv");
            text.Append(CultureInfo.InvariantCulture, $"[[export]]\nname = \"climate\"\nhouse = \"{house}\"\nfiles = [\"{files}\"]\n  [export.time]\n  field = \"time\"\n  format = \"yyyy-MM-dd HH:mm\"\n");
            foreach ((string channel, string unit, _, _, _, _) in Channels)
            {
                text.Append(CultureInfo.InvariantCulture, $"  [[export.column]]\n  field = \"{channel}\"\n  channel = \"{channel}\"\n  unit = \"{unit}\"\n");
            }
        }

        return text.ToString();
    }

    /// <summary>Writes rows of one step from an instant on.</summary>
    public static void Write(string path, Instant from, int rows, int stepMinutes)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb[Zone];
        using FileStream stream = new(path, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16);
        stream.Write(Encoding.ASCII.GetBytes("time," + string.Join(',', Channels.Select(c => c.Channel)) + "\n"));
        byte[] line = new byte[256];
        uint noise = 2_463_534_242;
        for (int i = 0; i < rows; i++)
        {
            Instant at = from + Duration.FromMinutes((long)i * stepMinutes);
            LocalDateTime local = at.InZone(zone).LocalDateTime;
            int length = WriteStamp(line, local);
            double day = Math.Cos(((local.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerDay) - 0.58) * 2 * Math.PI);
            double season = Math.Cos((local.DayOfYear - 196) / 365.25 * 2 * Math.PI);
            foreach ((_, string unit, int decimals, double mean, double swing, double spread) in Channels)
            {
                noise ^= noise << 13;
                noise ^= noise >> 17;
                noise ^= noise << 5;
                double value = mean + (swing * ((0.7 * day) + (0.3 * season))) + (spread * ((noise / (double)uint.MaxValue) - 0.5));
                value = unit == "Cel" ? value : Math.Max(0, value); // what cannot be below zero is not
                line[length++] = (byte)',';
                _ = Utf8Formatter.TryFormat(value, line.AsSpan(length), out int written, new System.Buffers.StandardFormat('F', (byte)decimals));
                length += written;
            }

            line[length++] = (byte)'\n';
            stream.Write(line, 0, length);
        }
    }

    private static int WriteStamp(Span<byte> line, LocalDateTime local)
    {
        Digits(line, 0, 4, local.Year);
        Digits(line, 5, 2, local.Month);
        Digits(line, 8, 2, local.Day);
        Digits(line, 11, 2, local.Hour);
        Digits(line, 14, 2, local.Minute);
        (line[4], line[7], line[10], line[13]) = ((byte)'-', (byte)'-', (byte)' ', (byte)':');
        return 16;
    }

    private static void Digits(Span<byte> line, int at, int count, int value)
    {
        for (int i = at + count - 1; i >= at; i--, value /= 10)
        {
            line[i] = (byte)('0' + (value % 10));
        }
    }
}
