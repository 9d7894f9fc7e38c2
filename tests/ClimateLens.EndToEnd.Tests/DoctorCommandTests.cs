using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>climatelens doctor</c>; what it looks at is held by the tests of the checkup.</summary>
public sealed class DoctorCommandTests
{
    [Fact]
    public void Doctor_FreshNursery_IsWell_AndAWeekLaterNamesTheSilentHouse()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2029, 10, 13), 7)); // after the time-zone data were made
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        ProgramRun well = ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-20T06:00:00Z");
        Assert.True(well.ExitCode == 0, well.ToString());
        Assert.EndsWith("\nAll is well.\n", well.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("LOOK", well.Output, StringComparison.Ordinal);

        ProgramRun silent = ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-27T06:00:00Z");
        Assert.Equal(1, silent.ExitCode);
        Assert.Contains("LOOK  House 1 has sent nothing for 7 days: its newest reading is of 2029-10-19 23:50. [data.stale]\n", silent.Output, StringComparison.Ordinal);
        Assert.EndsWith("\n1 thing to look at.\n", silent.Output, StringComparison.Ordinal);
        Assert.Equal(0, ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-27T06:00:00Z", "--stale", "8").ExitCode);
    }

    [Fact]
    public void Doctor_Json_HoldsEachCheck()
    {
        using SmallNursery nursery = new();
        JsonElement json = ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--json").Json;
        Assert.Equal(1, json.GetProperty("exitCode").GetInt32());
        JsonElement ledger = Assert.Single(json.GetProperty("checks").EnumerateArray(), c => c.GetProperty("code").GetString() == "store.ledger");
        Assert.Equal((false, "Nothing was imported yet."), (ledger.GetProperty("fine").GetBoolean(), ledger.GetProperty("text").GetString()));
        Assert.False(Directory.Exists(nursery.PathOf("store")));
    }

    [Theory]
    [InlineData("--stale", "0")]
    [InlineData("--now", "yesterday")]
    public void Doctor_WrongOption_Is64(string option, string value)
        => Assert.Equal(64, ClimateLensProgram.Run("doctor", "nursery.toml", option, value).ExitCode);
}
