using System.Text;

namespace ClimateLens.Logs.Tests.Fuzzing;

/// <summary>A sound small export and how it reads; fuzzing starts from it.</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="Toml">Its table of the nursery file, for files named <c>x.*</c>.</param>
/// <param name="File">File name.</param>
/// <param name="Bytes">The file.</param>
internal sealed record Flavour(string Name, string Toml, string File, byte[] Bytes)
{
    /// <summary>All of them.</summary>
    public static Flavour[] All { get; } =
    [
        Of("plain", TestNursery.Climate, "x.csv", Encoding.UTF8.GetBytes("time,temp,rh\n" + Rows(i => $"2025-10-{27 + (i / 24):00}T{i % 24:00}:00,{15 + (i % 9)}.5,{80 + (i % 15)}\n"))),
        Of("semicolons and commas, day first, quoted, over the clock change", """
            [[export]]
            name = "climate"
            house = "1"
            files = ["x.*"]
            delimiter = ";"
            decimalChar = ","
            groupChar = "."
            headerRow = 2
            missingValues = ["-999"]
              [export.time]
              field = "Tid"
              timeOfDayField = "Kl"
              format = "dd-MM-yyyy HH:mm"
              [[export.column]]
              field = "Temp"
              channel = "airTemperature"
              unit = "[degF]"
              [[export.column]]
              field = "Pumpe"
              channel = "fan"
            """, "x.txt", Encoding.UTF8.GetBytes("Hus 1; uge 43\r\nTid;Kl;Temp;Pumpe\r\n" + Rows(i => $"26-10-2025;{(i < 24 ? i / 12 : (i / 12) - 1):00}:{5 * (i % 12):00};\"6{i % 10},5\";{(i % 2 == 0 ? "on" : "off")}\r\n"))),
        Of("UTF-16 with tabs", """
            [[export]]
            name = "climate"
            house = "1"
            files = ["x.*"]
            encoding = "utf-16le"
            delimiter = "\t"
              [export.time]
              position = 1
              format = "M/d/yyyy h:mm a"
              [[export.column]]
              field = "RH"
              channel = "relativeHumidity"
              unit = "1"
            """, "x.tsv", Encoding.Unicode.GetBytes("\uFEFFTime\tRH\n" + Rows(i => $"3/29/2025 {(i % 12) + 1}:{i / 12:00} {(i % 2 == 0 ? "AM" : "PM")}\t0.{i + 10}\n"))),
        Of("records", """
            [[export]]
            name = "pots"
            kind = "potChecks"
            files = ["x.*"]
              [export.time]
              field = "time"
              format = "iso"
              [[export.column]]
              field = "house"
              channel = "house"
              [[export.column]]
              field = "level"
              channel = "level"
              [[export.column]]
              field = "note"
              channel = "note"
            """, "x.csv", Encoding.UTF8.GetBytes("time,house,level,note\n" + Rows(i => $"2025-10-{i + 1:00}T09:00,{(i % 2) + 1},{(i % 5) + 1},\"a \"\"dry\"\" one, {i}\nsecond line\"\n", 28))),
    ];

    private static Flavour Of(string name, string toml, string file, byte[] bytes) => new(name, toml, file, bytes);

    private static string Rows(Func<int, string> row, int count = 60) => string.Concat(Enumerable.Range(0, count).Select(row));
}
