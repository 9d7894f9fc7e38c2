using System.Globalization;
using System.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Logs.Tests;

/// <summary>A nursery in a folder of its own, with exports written by a test; removed at the end.</summary>
internal sealed class TestNursery : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public TestNursery(string exportsToml, string zone = "Europe/London")
    {
        Set(exportsToml, zone);
    }

    /// <summary>A nursery whose first house has more settings of its own.</summary>
    public static TestNursery WithHouse(string house, string exportsToml)
    {
        var nursery = new TestNursery(exportsToml);
        nursery.SetPlace(exportsToml, 53, 0, "Europe/London", house);
        return nursery;
    }

    /// <summary>One source of two channels, comma and ISO times.</summary>
    public const string Climate = """
        [[export]]
        name = "climate"
        house = "1"
        files = ["*.csv"]
        missingValues = ["-999"]
          [export.time]
          field = "time"
          format = "iso"
          [[export.column]]
          field = "temp"
          channel = "airTemperature"
          unit = "Cel"
          [[export.column]]
          field = "rh"
          channel = "relativeHumidity"
          unit = "%"
        """;

    /// <summary>An export of records of any house, comma and ISO times, in text files that begin with its name.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="columns">Its fields, each named as its channel; behind a blank the unit.</param>
    public static string RecordExport(string name, string kind, params string[] columns) => $"""

        [[export]]
        name = "{name}"
        kind = "{kind}"
        files = ["{name}*.txt"]
          [export.time]
          field = "time"
          format = "iso"
        {string.Join('\n', columns.Select(c => c.Split(' ')).Select(c => $"  [[export.column]]\n  field = \"{c[0]}\"\n  channel = \"{c[0]}\"\n" + (c.Length > 1 ? $"  unit = \"{c[1]}\"\n" : "")))}
        """;

    public string Folder => _folder.Path;

    public string Store => Path.Combine(Folder, "store");

    public NurserySettings Settings { get; private set; } = null!;

    public HouseSettings House => Settings.Houses[0];

    public void Set(string exportsToml, string zone = "Europe/London") => SetPlace(exportsToml, 53, 0, zone);

    public void SetPlace(string exportsToml, int latitude, int longitude, string zone = "Europe/London", string house = "")
    {
        string toml = $"""
            [nursery]
            name = "Test"
            timeZone = "{zone}"
            latitude = {latitude}
            longitude = {longitude}
            elevationM = 10
            [[house]]
            id = "1"
            name = "House 1"
            {house}
            [[house]]
            id = "2"
            name = "House 2"

            """ + exportsToml;
        Settings = NurseryFile.Parse("nursery.toml", Encoding.UTF8.GetBytes(toml));
    }

    public string Write(string name, string text) => Write(name, Encoding.UTF8.GetBytes(text));

    public string Write(string name, byte[] bytes)
    {
        string path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    public ImportReport Import()
    {
        using ReadingStore store = ReadingStore.Open(Settings, Folder);
        return store.Import();
    }

    public HouseInput Load(int house = 0)
    {
        using ReadingStore store = ReadingStore.Open(Settings, Folder);
        return store.Load(Settings.Houses[house], new Interval(Instant.FromUtc(1960, 1, 1, 0, 0), Instant.FromUtc(2100, 1, 1, 0, 0)), Duration.Zero);
    }

    /// <summary>What the only source of house 1 holds, a line a row: time, then name=value for each value.</summary>
    public string[] Rows(int house = 0) => Load(house).Batches is [var batch, ..] ? [.. Enumerable.Range(0, batch.UtcMicros.Length).Select(i =>
        Instant.FromUnixTimeTicks(batch.UtcMicros[i] * 10).ToString("uuuu-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)
        + string.Concat(batch.Columns.Where(c => !double.IsNaN(c.Value[i])).Select(c => string.Create(CultureInfo.InvariantCulture, $" {c.Key}={c.Value[i]:R}"))))] : [];

    /// <summary>Hash of every file of the store by its path, without the lock.</summary>
    public SortedDictionary<string, string> StoreFiles()
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (string path in Directory.GetFiles(Store, "*", SearchOption.AllDirectories).Where(p => !p.EndsWith(".lock", StringComparison.Ordinal)))
        {
            files[Path.GetRelativePath(Store, path).Replace('\\', '/')] = Logs.Store.ContentHash.OfFile(path)!;
        }

        return files;
    }

    /// <summary>All that was set aside: line, column, code and text of each row, after the header.</summary>
    public (int Line, int? Column, string Code, string Text)[] SetAside()
    {
        string folder = Path.Combine(Store, "set-aside");
        return !Directory.Exists(folder) ? [] : [.. Directory.GetFiles(folder, "*.csv", SearchOption.AllDirectories).Order(StringComparer.Ordinal).SelectMany(SetAsideReader.Read)];
    }

    public static Problem Single(ImportReport report, string code) => Assert.Single(report.Problems, p => p.Code == code);

    public void Dispose() => _folder.Dispose();
}
