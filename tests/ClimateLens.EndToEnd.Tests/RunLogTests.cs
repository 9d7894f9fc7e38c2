using System.Diagnostics;
using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>run --log</c>.</summary>
public sealed class RunLogTests
{
    [Fact]
    public void Log_HoldsALineAtTheStart_ForEachPageMade_AndOneThatSumsUp_BehindWhatIsThere()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 9, 29), 14) + "nonsense,1,2\n");
        string log = nursery.PathOf("run.log");
        Assert.Equal(1, ClimateLensProgram.Run("run", nursery.NurseryFile, "--log", log).ExitCode);
        Assert.Equal(0, ClimateLensProgram.Run("run", nursery.NurseryFile, "--log", log).ExitCode);
        JsonElement[] lines = [.. File.ReadAllLines(log).Select(l => JsonDocument.Parse(l).RootElement)];
        Assert.Equal(["started", "houseWeek", "houseWeek", "run", "started", "run"], lines.Select(l => l.GetProperty("event").GetString()));
        Assert.Equal(["2025-W41 new", "2025-W40 new"], lines.Skip(1).Take(2).Select(l => $"{l.GetProperty("period").GetString()} {l.GetProperty("status").GetString()}"));
        Assert.Equal((1, 2, 0, 0, 1), Sums(lines[3]));
        Assert.Equal(1, lines[3].GetProperty("problems").GetProperty("import.time").GetInt32());
        Assert.Equal((0, 0, 2, 0, 0), Sums(lines[5]));
    }

    [Fact]
    public void Log_RunThatCannotGoOn_IsSummedUpToo()
    {
        using SmallNursery nursery = new();
        nursery.Write("nursery.toml", "[nursery]\n");
        Assert.Equal(78, ClimateLensProgram.Run("run", nursery.NurseryFile, "--log", nursery.PathOf("run.log")).ExitCode);
        Assert.Equal(78, JsonDocument.Parse(File.ReadLines(nursery.PathOf("run.log")).Last()).RootElement.GetProperty("exitCode").GetInt32());
    }

    /// <summary>What was done before a run stopped is in no later log: the file is imported, its rows are set aside, and half of the pages stand.</summary>
    [Fact]
    public void Log_RunThatStopsMidway_TellsWhatItDid_AndTheDoctorRepeatsIt()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2029, 10, 1), 14) + "nonsense,1,2\n");
        nursery.Write("site/house-1/2029-W41", "a file where a folder should be");
        Assert.Equal(73, ClimateLensProgram.Run("run", nursery.NurseryFile, "--jobs", "1", "--log", nursery.PathOf("run.log")).ExitCode);
        JsonElement[] lines = [.. File.ReadAllLines(nursery.PathOf("run.log")).Select(l => JsonDocument.Parse(l).RootElement)];
        Assert.Equal((1, 0, 1, 1), (lines[^1].GetProperty("made").GetInt32(), lines[^1].GetProperty("unchanged").GetInt32(), lines[^1].GetProperty("filesRead").GetInt32(), lines[^1].GetProperty("rowsSetAside").GetInt32()));
        Assert.Equal("2029-W40", Assert.Single(lines, l => l.GetProperty("event").GetString() == "houseWeek").GetProperty("period").GetString());
        ProgramRun doctor = ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-15T06:00:00Z");
        Assert.Contains("LOOK  The last run ended with 73.", doctor.Output, StringComparison.Ordinal);

        File.Delete(nursery.PathOf("site/house-1/2029-W41"));
        Assert.Equal(0, ClimateLensProgram.Run("run", nursery.NurseryFile).ExitCode);
        Assert.Equal(0, ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-15T06:00:00Z").ExitCode);
    }

    [Fact]
    public void Log_ThatCannotBeWritten_StopsBeforeTheWork()
    {
        using SmallNursery nursery = new();
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile, "--log", nursery.PathOf("no/such/folder/run.log"));
        Assert.Equal(73, run.ExitCode);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.False(Directory.Exists(nursery.PathOf("site")));
    }

    [Fact]
    public void Log_SharedByRunsAtOnce_LosesNoLine()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 9, 29), 14));
        string log = nursery.PathOf("run.log");
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        Process[] runs = [.. ((string[])["2025-W40", "2025-W41"]).Select(week => ClimateLensProgram.Start(null, "run", nursery.NurseryFile, "--house", "1", "--week", week, "--log", log, "--quiet"))];
        foreach (Process run in runs)
        {
            Assert.True(run.WaitForExit(TimeSpan.FromMinutes(5)));
            Assert.Equal(0, run.ExitCode);
            run.Dispose();
        }

        Assert.Equal(["houseWeek", "houseWeek", "run", "run", "started", "started"], File.ReadAllLines(log).Select(l => JsonDocument.Parse(l).RootElement.GetProperty("event").GetString()).Order());
    }

    private static (int, int, int, int, int) Sums(JsonElement run) => (run.GetProperty("exitCode").GetInt32(), run.GetProperty("made").GetInt32(), run.GetProperty("unchanged").GetInt32(), run.GetProperty("failed").GetInt32(), run.GetProperty("rowsSetAside").GetInt32());
}
