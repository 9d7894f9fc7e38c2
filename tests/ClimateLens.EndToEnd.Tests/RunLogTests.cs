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
