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
    [InlineData]
    public void WrongCommandLine_Answers64_OnStderr(params string[] args)
    {
        ProgramRun run = ClimateLensProgram.Run(args);
        Assert.True(run.ExitCode == 64, run.ToString());
        Assert.Empty(run.Output);
        Assert.NotEmpty(run.Error);
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
