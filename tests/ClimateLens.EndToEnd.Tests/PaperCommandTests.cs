using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>drench and sheet, which need no store.</summary>
public sealed class PaperCommandTests
{
    [Fact]
    public void Drench_Plan_PrintsSumsAndCaution()
    {
        ProgramRun run = ClimateLensProgram.Run("drench", "--pots", "2500", "--volume", "120 mL", "--concentration", "50 mg/L", "--overage", "5", "--flow", "0.5 gph");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Contains("315 L", run.Output, StringComparison.Ordinal);
        Assert.Contains("6 mg of active ingredient", run.Output, StringComparison.Ordinal);
        Assert.Contains("the label, which rules", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drench", "--pots", "10")]
    [InlineData("drench", "--pots", "0", "--volume", "120 mL")]
    [InlineData("drench", "--pots", "10", "--volume", "120")]
    [InlineData("drench", "--pots", "10", "--volume", "120 mL", "--overage", "101")]
    [InlineData("drench", "--pots", "10", "--volume", "120 mL", "--cups", "1,x")]
    [InlineData("drench", "--pots", "10", "--volume", "120 mL", "--flow", "2")]
    [InlineData("sheet", "--pairs", "3")]
    [InlineData("sheet", "--paper", "a3")]
    public void WrongCommandLine_Answers64(params string[] args) => Assert.Equal(64, ClimateLensProgram.Run(args).ExitCode);

    [Fact]
    public void Sheet_NurseryAndHouse_NamesItsBenches()
    {
        ProgramRun run = ClimateLensProgram.Run("sheet", Repository.PathOf("sample-logs/nursery.toml"), "--house", "2", "--paper", "letter");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.StartsWith("<!DOCTYPE html>", run.Output, StringComparison.Ordinal);
        Assert.Contains("House 2", run.Output, StringComparison.Ordinal);
        Assert.Contains("<td>B</td>", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_HouseThatIsNotThere_Answers66()
        => Assert.Equal(66, ClimateLensProgram.Run("sheet", Repository.PathOf("sample-logs/nursery.toml"), "--house", "9").ExitCode);
}
