using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>What becomes of pages that stand when data come in behind, among and before them.</summary>
public sealed class StandingWeeksTests : IDisposable
{
    private const string Waterings = """

        [[export]]
        name = "waterings"
        kind = "waterings"
        house = "1"
        files = ["waterings.csv"]
          [export.time]
          field = "time"
          format = "yyyy-MM-dd HH:mm"
          [[export.column]]
          field = "method"
          channel = "method"
          [[export.column]]
          field = "minutes"
          channel = "minutes"
          unit = "min"
        """;
    private const string OneWatering = "time,method,minutes\n2025-09-10 09:00,overhead,10\n";

    private static readonly DateTime First = new(2025, 9, 8);

    private readonly SmallNursery _nursery = new(export: SmallNursery.Week(First, 21));

    public StandingWeeksTests()
    {
        _nursery.Write("nursery.toml", SmallNursery.File().Replace("house.csv", "*.csv", StringComparison.Ordinal) + Waterings);
        _nursery.Write("waterings.csv", OneWatering);
    }

    /// <summary>Each run makes the weeks that look at what came in; in the end the pages are those that the store makes from nothing.</summary>
    [Fact]
    public void Run_AfterEachChange_MakesTheWeeksThatItTouches_AndEndsWithThePagesOfARunFromNothing()
    {
        Assert.Equal(["2025-W37", "2025-W38", "2025-W39"], Renewed());
        _nursery.Write("exports/later.csv", SmallNursery.Week(First.AddDays(21), 7));
        Assert.Equal(["2025-W40"], Renewed());
        _nursery.Write("waterings.csv", OneWatering + "2025-09-30 17:00,overhead,10\n");
        Assert.Equal(["2025-W40"], Renewed());
        Correct("exports/house.csv", "2025-09-20 12:00");
        Assert.Equal(["2025-W38", "2025-W39", "2025-W40"], Renewed(exitCode: 1)); // told: two versions of a file contradict each other
        _nursery.Write("exports/latest.csv", SmallNursery.Week(First.AddDays(28), 7));
        Assert.Equal(["2025-W41"], Renewed());
        Assert.Empty(Renewed());
        Dictionary<string, byte[]> pages = Pages();
        Directory.Delete(_nursery.PathOf("site"), recursive: true);
        Assert.Equal(5, Renewed().Length);
        Dictionary<string, byte[]> anew = Pages();
        Assert.Equal(anew.Keys.Order(StringComparer.Ordinal), pages.Keys.Order(StringComparer.Ordinal));
        Assert.All(anew, page => Assert.True(page.Value.AsSpan().SequenceEqual(pages[page.Key]), page.Key));
    }

    /// <summary>The work of a week does not grow with the years behind it: nothing of them is read. A part that could not be read would be built again, so one is spoilt.</summary>
    [Fact]
    public void Run_ANewWeek_ReadsNothingOfYearsThatStand()
    {
        _nursery.Write("exports/long-ago.csv", SmallNursery.Week(new DateTime(2023, 9, 4), 14));
        Assert.Equal(5, Renewed().Length);
        string old = _nursery.PathOf("store/readings/house=1/source=climate/year=2023/part.parquet");
        byte[] spoilt = File.ReadAllBytes(old);
        spoilt[spoilt.Length / 2] ^= 1;
        File.WriteAllBytes(old, spoilt);
        _nursery.Write("exports/later.csv", SmallNursery.Week(First.AddDays(21), 7));
        Assert.Equal(["2025-W40"], Renewed());
        Assert.Equal(spoilt, File.ReadAllBytes(old));
        Correct("exports/long-ago.csv", "2023-09-06 12:00"); // and where it is read, it is mended
        Assert.Equal(["2023-W36", "2023-W37"], Renewed(exitCode: 1));
        Assert.NotEqual(spoilt, File.ReadAllBytes(old));
    }

    /// <summary>A run over many weeks that is killed has not worked for nothing: pages that were done by then stand as they are.</summary>
    [Fact]
    public void Run_AfterOneThatWasKilled_MakesOnlyWhatWasNotDone()
    {
        _nursery.Write("exports/later.csv", SmallNursery.Week(First.AddDays(21), 28));
        string note = _nursery.PathOf("site/house-1/2025-W38/.entry.json"), page = _nursery.PathOf("site/house-1/2025-W38/index.html");
        bool isKilled = false;
        for (int attempt = 0; attempt < 5 && !isKilled; attempt++)
        {
            if (Directory.Exists(_nursery.PathOf("site")))
            {
                Directory.Delete(_nursery.PathOf("site"), recursive: true);
            }

            isKilled = KilledProgram.KillAfter(() => File.Exists(note), TimeSpan.Zero, "run", _nursery.NurseryFile, "--jobs", "1");
        }

        Assert.True(isKilled, "each run was done before it could be killed");
        DateTime made = File.GetLastWriteTimeUtc(page);
        string[] renewed = Renewed();
        Assert.DoesNotContain("2025-W38", renewed);
        Assert.Contains("2025-W43", renewed);
        Assert.Equal(made, File.GetLastWriteTimeUtc(page));
        Assert.False(File.Exists(note));
        Assert.Empty(Renewed());
    }

    public void Dispose() => _nursery.Dispose();

    /// <summary>Runs, and gives the weeks whose pages were made.</summary>
    private string[] Renewed(int exitCode = 0)
    {
        string log = _nursery.PathOf("run.log");
        File.Delete(log);
        ProgramRun run = ClimateLensProgram.Run("run", _nursery.NurseryFile, "--log", log);
        Assert.True(run.ExitCode == exitCode, run.ToString());
        return [.. File.ReadAllLines(log).Select(line => JsonDocument.Parse(line).RootElement).Where(e => e.GetProperty("event").GetString() == "houseWeek").Select(e => e.GetProperty("period").GetString()!).Order(StringComparer.Ordinal)];
    }

    private Dictionary<string, byte[]> Pages()
    {
        string site = _nursery.PathOf("site/house-1");
        return Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(site, path), File.ReadAllBytes);
    }

    /// <summary>Another air temperature in a row.</summary>
    private void Correct(string file, string time)
    {
        string[] lines = File.ReadAllLines(_nursery.PathOf(file));
        int row = Array.FindIndex(lines, line => line.StartsWith(time, StringComparison.Ordinal));
        string[] cells = lines[row].Split(',');
        lines[row] = $"{cells[0]},19.99,{cells[2]}";
        _nursery.Write(file, string.Join('\n', lines) + "\n");
    }
}
