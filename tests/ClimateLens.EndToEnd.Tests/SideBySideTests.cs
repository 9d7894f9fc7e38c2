using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>plan</c>, <c>run --house --week</c> and <c>finish</c>: a site made by many runs is the site that one run makes.</summary>
public sealed class SideBySideTests : IDisposable
{
    private readonly SmallNursery _nursery = TwoHouses();

    [Fact]
    public void PlannedRuns_AllAtOnce_AndFinish_MakeTheSiteOfOneRun_ByteForByte()
    {
        ProgramRun plan = ClimateLensProgram.Run("plan", _nursery.NurseryFile);
        Assert.True(plan.ExitCode == 0, plan.ToString());
        Assert.Equal("--house 1 --week 2025-W40\n--house 1 --week 2025-W41\n--house 2 --week 2025-W40\n--house 2 --week 2025-W41\n", plan.Output);
        Assert.False(File.Exists(_nursery.PathOf("site/index.html")));

        Process[] runs = [.. plan.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => ClimateLensProgram.Start(null, ["run", _nursery.NurseryFile, "--quiet", .. line.Split(' ')]))];
        foreach (Process run in runs)
        {
            Assert.True(run.WaitForExit(TimeSpan.FromMinutes(5)));
            Assert.True(run.ExitCode == 0, run.StandardError.ReadToEnd());
            run.Dispose();
        }

        ProgramRun finish = ClimateLensProgram.Run("finish", _nursery.NurseryFile);
        Assert.True(finish.ExitCode == 0, finish.ToString());
        Assert.Equal("", ClimateLensProgram.Run("plan", _nursery.NurseryFile).Output);
        Assert.Contains("Nothing new", ClimateLensProgram.Run("run", _nursery.NurseryFile).Output, StringComparison.Ordinal);

        using SmallNursery undisturbed = TwoHouses();
        Assert.Equal(0, ClimateLensProgram.Run("run", undisturbed.NurseryFile, "--jobs", "1").ExitCode);
        Assert.Equal(Hashes(undisturbed.PathOf("site")), Hashes(_nursery.PathOf("site")));
    }

    [Fact]
    public void Finish_StartedTwice_LeavesTheIndexAlone_AndPlanTellsItsListAlsoWhereItIsQuiet()
    {
        Assert.Equal(0, ClimateLensProgram.Run("run", _nursery.NurseryFile).ExitCode);
        File.AppendAllText(_nursery.PathOf("exports/house.csv"), SmallNursery.Week(new DateTime(2025, 10, 13), 7)["Time,Air,RH\n".Length..]);
        ProgramRun plan = ClimateLensProgram.Run("plan", _nursery.NurseryFile, "--quiet");
        string[] lines = plan.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains("--house 1 --week 2025-W42", lines);
        foreach (string line in lines)
        {
            Assert.Equal(0, ClimateLensProgram.Run(["run", _nursery.NurseryFile, .. line.Split(' ')]).ExitCode);
        }

        ClimateLensProgram.Run("finish", _nursery.NurseryFile);
        string index = File.ReadAllText(_nursery.PathOf("site/index.html"));
        Assert.Contains("Since the run before", index, StringComparison.Ordinal);
        ClimateLensProgram.Run("finish", _nursery.NurseryFile);
        Assert.Equal(index, File.ReadAllText(_nursery.PathOf("site/index.html")));
    }

    [Fact]
    public void OneHouseWeek_StartedTwice_LeavesThePageAlone()
    {
        Import();
        Assert.Equal("new", StatusOf(One("1", "2025-W40")));
        DateTime made = File.GetLastWriteTimeUtc(_nursery.PathOf("site/house-1/2025-W40/index.html"));
        Assert.Equal("unchanged", StatusOf(One("1", "2025-W40")));
        Assert.Equal(made, File.GetLastWriteTimeUtc(_nursery.PathOf("site/house-1/2025-W40/index.html")));
    }

    [Fact]
    public void Finish_WithWorkLeft_Is1_NamesIt_AndListsWhatStands()
    {
        Import();
        One("1", "2025-W40");
        ProgramRun finish = ClimateLensProgram.Run("finish", _nursery.NurseryFile);
        Assert.Equal(1, finish.ExitCode);
        Assert.EndsWith("Still to be reviewed:\n--house 1 --week 2025-W41\n--house 2 --week 2025-W40\n--house 2 --week 2025-W41\n", finish.Output, StringComparison.Ordinal);
        Assert.Contains("house-1/2025-W40", File.ReadAllText(_nursery.PathOf("site/index.html")), StringComparison.Ordinal);
        JsonElement[] plan = [.. ClimateLensProgram.Run("plan", _nursery.NurseryFile, "--json").Json.GetProperty("plan").EnumerateArray()];
        Assert.Equal(["1 2025-W41", "2 2025-W40", "2 2025-W41"], plan.Select(p => $"{p.GetProperty("house").GetString()} {p.GetProperty("week").GetString()}"));

        // About a week of ten-minute readings of two channels, and for the later week those of the one before it: half weeks that lie partly within count by their share.
        long later = plan[0].GetProperty("values").GetInt64(), first = plan[1].GetProperty("values").GetInt64();
        const double Week = 7 * 144 * 2;
        Assert.InRange(first, 0.98 * Week, 1.02 * Week);
        Assert.InRange(later, 0.98 * 2 * Week, 1.02 * 2 * Week);
    }

    [Fact]
    public void Finish_SiteStateLost_TakesThePagesUpFromTheirReviews()
    {
        Assert.Equal(0, ClimateLensProgram.Run("run", _nursery.NurseryFile).ExitCode);
        (string index, string feed) = (Read("index.html"), Read("feed.xml"));
        File.Delete(_nursery.PathOf("site/site.json"));
        ProgramRun finish = ClimateLensProgram.Run("finish", _nursery.NurseryFile);
        Assert.Equal(1, finish.ExitCode); // which program made them is not known any more
        Assert.Equal((index, feed), (Read("index.html"), Read("feed.xml")));
    }

    [Fact]
    public void Finish_HouseThatLacksTheNewestWeek_Is1AndNamesIt_AsARunDoes()
    {
        using SmallNursery nursery = TwoHouses(weeksOfSecond: 1);
        Assert.Equal(1, ClimateLensProgram.Run("run", nursery.NurseryFile).ExitCode);
        ProgramRun finish = ClimateLensProgram.Run("finish", nursery.NurseryFile);
        Assert.Equal(1, finish.ExitCode);
        Assert.Contains("House 2 has no whole week 2025-W41", finish.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void PlainRun_AfterSingleOnes_KeepsTheirPages_AndTidiesUp()
    {
        Import();
        One("1", "2025-W40");
        JsonElement[] weeks = [.. ClimateLensProgram.Run("run", _nursery.NurseryFile, "--json").Json.GetProperty("houseWeeks").EnumerateArray()];
        Assert.Equal(["new", "new", "unchanged", "new"], weeks.OrderByDescending(w => w.GetProperty("period").GetString()).ThenBy(w => w.GetProperty("house").GetString()).Select(w => w.GetProperty("status").GetString()));
        Assert.DoesNotContain(Hashes(_nursery.PathOf("site")).Keys, f => f.Contains(".entry", StringComparison.Ordinal) || f.Contains(".staging", StringComparison.Ordinal));
    }

    [Fact]
    public void OneHouseWeek_WhileSomeoneHoldsStoreOrPage_Is75_ThenGoesThrough()
    {
        Import();
        using (new FileStream(_nursery.PathOf("store/.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal(75, One("1", "2025-W40").ExitCode);
        }

        Directory.CreateDirectory(_nursery.PathOf("site/.staging"));
        using (new FileStream(_nursery.PathOf("site/.staging/house-1~2025-W40.lock"), FileMode.Create, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal(75, One("1", "2025-W40").ExitCode);
            Assert.Equal(0, One("2", "2025-W40").ExitCode);
        }

        Assert.Equal(0, One("1", "2025-W40").ExitCode);
    }

    [Fact]
    public void Import_WhileAHouseWeekIsRead_Is75()
    {
        Import();
        using (new FileStream(_nursery.PathOf("store/.lock"), FileMode.Open, FileAccess.Read, FileShare.Read))
        {
            Assert.Equal(75, ClimateLensProgram.Run("import", _nursery.NurseryFile).ExitCode);
            Assert.Equal(0, One("1", "2025-W40").ExitCode);
        }
    }

    [Fact]
    public void OneHouseWeek_NothingToReviewIt_Is66()
    {
        Assert.Equal(66, One("1", "2025-W40").ExitCode);
        Import();
        Assert.Equal(66, One("3", "2025-W40").ExitCode);
        Assert.Equal(66, One("2", "2025-W42").ExitCode);
        Assert.Equal(66, ClimateLensProgram.Run("finish", _nursery.NurseryFile).ExitCode);
    }

    [Theory]
    [InlineData("--house", "1")]
    [InlineData("--week", "2025-W40")]
    [InlineData("--house", "1", "--week", "2025-W60")]
    [InlineData("--house", "1", "--week", "2025-W40", "--jobs", "2")]
    [InlineData("--jobs", "0")]
    public void Run_OptionsThatDoNotGoTogether_Are64(params string[] options)
        => Assert.Equal(64, ClimateLensProgram.Run(["run", "nursery.toml", .. options]).ExitCode);

    /// <inheritdoc/>
    public void Dispose() => _nursery.Dispose();

    private void Import() => Assert.Equal(0, ClimateLensProgram.Run("import", _nursery.NurseryFile).ExitCode);

    private ProgramRun One(string house, string week) => ClimateLensProgram.Run("run", _nursery.NurseryFile, "--house", house, "--week", week, "--json");

    private string Read(string place) => File.ReadAllText(_nursery.PathOf("site/" + place));

    private static string? StatusOf(ProgramRun run) => run.Json.GetProperty("houseWeeks")[0].GetProperty("status").GetString();

    private static SmallNursery TwoHouses(int weeksOfSecond = 2)
    {
        SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 9, 29), 14));
        nursery.Write("exports/two.csv", SmallNursery.Week(new DateTime(2025, 9, 29), weeksOfSecond * 7));
        string file = SmallNursery.File();
        string export = file[file.IndexOf("[[export]]", StringComparison.Ordinal)..].Replace("house = \"1\"", "house = \"2\"", StringComparison.Ordinal).Replace("house.csv", "two.csv", StringComparison.Ordinal);
        nursery.Write("nursery.toml", file.Replace("[[export]]", "[[house]]\nid = \"2\"\nname = \"House 2\"\n\n[[export]]", StringComparison.Ordinal) + "\n" + export);
        return nursery;
    }

    private static SortedDictionary<string, string> Hashes(string folder) => new(Directory
        .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToDictionary(f => Path.GetRelativePath(folder, f), f => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))), StringComparer.Ordinal);
}
