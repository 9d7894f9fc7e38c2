using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The command line as a stranger meets it.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("run")]
    [InlineData("review")]
    [InlineData("import")]
    [InlineData("check")]
    public void Help_OfEachCommand_IsShortAndHasAnExample(string command)
    {
        ProgramRun run = ClimateLensProgram.Run(command, "--help");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Contains($"Example: climatelens {command} sample-logs/nursery.toml", run.Output, StringComparison.Ordinal);
        Assert.All(["--out", "--units", "--json", "--quiet", "--verbose"], option => Assert.Contains(option, run.Output, StringComparison.Ordinal));
        Assert.InRange(run.Output.Split('\n').Length, 5, 30);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("run", "nursery.toml", "--unit", "us")]
    [InlineData("run", "nursery.toml", "--units", "imperial")]
    [InlineData("run", "nursery.toml", "--quiet", "--verbose")]
    [InlineData("run", "nursery.toml", "--out")]
    [InlineData("run", "nursery.toml", "--out", "a", "--out", "b")]
    [InlineData("review", "nursery.toml", "--house", "1", "--week")]
    [InlineData("review", "nursery.toml", "--house", "1", "--from", "0001-01-01", "--to", "9999-12-31")]
    [InlineData("runn", "nursery.toml")]
    [InlineData("review", "nursery.toml")]
    [InlineData("review", "nursery.toml", "--house", "1")]
    [InlineData("review", "nursery.toml", "--house", "1", "--week", "2025-W54")]
    [InlineData("review", "nursery.toml", "--house", "1", "--week", "2025-W42", "--from", "2025-10-13")]
    [InlineData("review", "nursery.toml", "--house", "1", "--from", "2025-10-20", "--to", "2025-10-13")]
    [InlineData("run", "nursery.toml", "--jobs", "x")]
    [InlineData("run", "nursery.toml", "--jobs", "99999999999")]
    [InlineData("run", "nursery.toml", "--jobs", "0")]
    [InlineData("run", "nursery.toml", "--jobs")]
    [InlineData("doctor", "nursery.toml", "--stale", "3.5")]
    [InlineData("doctor", "nursery.toml", "--stale", "")]
    [InlineData("set-aside", "nursery.toml", "--limit", "x")]
    [InlineData("compare", "nursery.toml", "--houses", "1,2", "--around", "2025-10-15", "--days", "x")]
    [InlineData("compare", "nursery.toml", "--houses")]
    [InlineData("sheet", "--pairs", "x")]
    [InlineData("drench", "--pots", "x", "--volume", "1 L")]
    [InlineData("drench", "--pots", "10", "--volume", "1 L", "--overage", "1,5")]
    [InlineData]
    public void WrongCommandLine_Answers64_OnStderr(params string[] args)
    {
        ProgramRun run = ClimateLensProgram.Run(args);
        Assert.True(run.ExitCode == 64, run.ToString());
        Assert.Empty(run.Output);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("System.", run.Error, StringComparison.Ordinal); // no type names, no stack
    }

    /// <summary>A scheduler may close the standard output: the pages are made all the same.</summary>
    [Fact]
    public void OutputThatIsClosed_LosesWhatIsSaid_NotTheWork()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // no such thing there
        }

        using SmallNursery nursery = new();
        ProgramRun run = ClimateLensProgram.RunClosed("1", "run", nursery.NurseryFile);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.True(File.Exists(nursery.PathOf("site/index.html")));
        Assert.Equal(0, ClimateLensProgram.RunClosed("2", "run", nursery.NurseryFile).ExitCode);
    }

    [Fact]
    public void Json_IsTheOnlyThingOnStdout_AlsoWhenItFails()
    {
        ProgramRun run = ClimateLensProgram.Run("run", "no-such-file.toml", "--json");
        Assert.Equal(66, run.ExitCode);
        Assert.Equal(66, run.Json.GetProperty("exitCode").GetInt32());
        Assert.Contains("no-such-file.toml", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Stderr_WhenNotATerminal_HasNoEscapeCodes()
    {
        using SmallNursery nursery = new();
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile, "--verbose");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.DoesNotContain('\u001b', run.Error + run.Output);
    }
}
