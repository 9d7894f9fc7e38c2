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

    /// <summary>A damaged part is built again in the middle of a run, without the rows of an export that is gone: weeks that the run had passed by then are looked at again, and the loss is told.</summary>
    [Fact]
    public void Run_APartBuiltAgainWithLessInIt_LooksAtTheWeeksBeforeToo_AndTellsTheLoss()
    {
        _nursery.Write("exports/later.csv", SmallNursery.Week(First.AddDays(21), 7));
        Assert.Equal(4, Renewed().Length);
        File.Delete(_nursery.PathOf("exports/house.csv"));
        Assert.Empty(Renewed());
        string part = _nursery.PathOf("store/readings/house=1/source=climate/year=2025/part.parquet");
        byte[] spoilt = File.ReadAllBytes(part);
        spoilt[spoilt.Length / 2] ^= 1;
        File.WriteAllBytes(part, spoilt);
        _nursery.Write("waterings.csv", OneWatering + "2025-09-30 17:00,overhead,10\n");
        ProgramRun run = ClimateLensProgram.Run("run", _nursery.NurseryFile);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("[store.lost]", run.Error, StringComparison.Ordinal);
        Assert.Equal(3, run.Error.Split("[review.leftBehind]").Length - 1); // their pages stand, and are not taken for what was
        Assert.Contains("house-1/2025-W37", run.Error, StringComparison.Ordinal);
        Dictionary<string, byte[]> newest = Pages("2025-W40");
        Directory.Delete(_nursery.PathOf("site"), recursive: true);
        Assert.Equal(["2025-W40"], Renewed());
        Assert.All(Pages("2025-W40"), page => Assert.True(page.Value.AsSpan().SequenceEqual(newest[page.Key]), page.Key));
    }

    /// <summary>A remark bears on no page, a threshold on all of its house.</summary>
    [Fact]
    public void Run_NurseryFileChanged_MakesThePagesAgainOnlyWhereTheChangeBearsOnThem()
    {
        Assert.Equal(3, Renewed().Length);
        string file = File.ReadAllText(_nursery.NurseryFile);
        _nursery.Write("nursery.toml", "# looked through in autumn\n" + file);
        Assert.Empty(Renewed());
        string second = "[[house]]\nid = \"2\"\nname = \"House 2\"\n\n" + file[file.IndexOf("[[export]]", StringComparison.Ordinal)..file.IndexOf(Waterings.TrimStart(), StringComparison.Ordinal)].Replace("house = \"1\"", "house = \"2\"", StringComparison.Ordinal).Replace("*.csv", "other/*.csv", StringComparison.Ordinal);
        _nursery.Write("exports/other/two.csv", SmallNursery.Week(First, 7));
        _nursery.Write("nursery.toml", file + "\n" + second);
        Assert.Equal(["2025-W37"], Renewed(exitCode: 1)); // that of the new house, which has no further weeks
        _nursery.Write("nursery.toml", file.Replace("name = \"House 1\"", "name = \"House 1\"\n  [house.rules]\n  marginK = 1.5", StringComparison.Ordinal) + "\n" + second);
        Assert.Equal(["2025-W37", "2025-W38", "2025-W39"], Renewed(exitCode: 1));
    }

    /// <summary>A page names the nursery file.</summary>
    [Fact]
    public void Run_NurseryFileRenamed_MakesThePagesAgain()
    {
        Assert.Equal(3, Renewed().Length);
        File.Move(_nursery.NurseryFile, _nursery.PathOf("other.toml"));
        ProgramRun run = ClimateLensProgram.Run("run", _nursery.PathOf("other.toml"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("other.toml", File.ReadAllText(_nursery.PathOf("site/house-1/2025-W38/review.json")), StringComparison.Ordinal);
    }

    /// <summary>An export saved again with nothing new in it is told on the pages of the weeks that it speaks of, and leaves the others.</summary>
    [Fact]
    public void Run_AnExportSavedAgain_LeavesWeeksThatItDoesNotSpeakOf()
    {
        _nursery.Write("exports/later.csv", SmallNursery.Week(First.AddDays(21), 21));
        Assert.Equal(6, Renewed().Length);
        File.AppendAllText(_nursery.PathOf("exports/house.csv"), "\n");
        Assert.Equal(["2025-W37", "2025-W38", "2025-W39", "2025-W40", "2025-W41"], Renewed()); // two whose run-in it reaches
    }

    /// <summary>Exports of one row an hour, or less, with waterings over the leaves.</summary>
    [Theory]
    [InlineData(6, 6)]
    [InlineData(12, 5)] // the last row of the last week is two hours before its end
    public void Run_StepsOfAnHourAndMore_AreReviewed(int every, int weeks)
    {
        string[] rows = SmallNursery.Week(First, 42).Split('\n');
        _nursery.Write("exports/house.csv", string.Join('\n', rows.Where((_, i) => i == 0 || (i - 1) % every == 0)) + "\n");
        _nursery.Write("waterings.csv", OneWatering + string.Concat(Enumerable.Range(0, 40).Select(day => $"{First.AddDays(day):yyyy-MM-dd} 16:00,overheadBoom,20\n")));
        Assert.Equal(weeks, Renewed().Length);
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

    private Dictionary<string, byte[]> Pages(string week = "")
    {
        string site = _nursery.PathOf($"site/house-1/{week}");
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
