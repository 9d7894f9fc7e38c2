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
    public void Doctor_AWeekWithoutAPage_AFolderOfSomeoneElse_AndALetterThatWaits_AreTold()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2029, 10, 15), 8));
        string[] doctor = ["doctor", nursery.NurseryFile, "--now", "2029-10-23T06:00:00Z"];
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        ProgramRun without = ClimateLensProgram.Run(doctor);
        Assert.Equal(1, without.ExitCode);
        Assert.Contains("LOOK  House 1 has readings of 2029-W42, but no page of it.", without.Output, StringComparison.Ordinal);
        Assert.Equal(0, ClimateLensProgram.Run("run", nursery.NurseryFile).ExitCode);
        Assert.Equal(0, ClimateLensProgram.Run(doctor).ExitCode);

        string page = nursery.PathOf("site/house-1/2029-W42/index.html");
        byte[] whole = File.ReadAllBytes(page);
        File.WriteAllBytes(page, whole[..^200]);
        Assert.Contains("LOOK  House 1: the page of 2029-W42 is damaged or cut off.", ClimateLensProgram.Run(doctor).Output, StringComparison.Ordinal);
        File.WriteAllBytes(page, whole);

        File.WriteAllText(nursery.PathOf("site/.mail.json"), "[]");
        Directory.CreateDirectory(nursery.PathOf("site/house-1/2029-W42/.doctor-probe")); // in the way of the probe, as a folder of someone else's would be
        ProgramRun told = ClimateLensProgram.Run(doctor);
        Assert.Contains("[mail.waiting]", told.Output, StringComparison.Ordinal);
        Assert.Contains("house-1/2029-W42 cannot be written", told.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Doctor_RowsWithoutValues_AreNoReadings()
    {
        string week = SmallNursery.Week(new DateTime(2029, 10, 15), 8), empty = SmallNursery.Week(new DateTime(2029, 10, 23), 4);
        string[] rows = [.. empty.Split('\n')[1..].Where(row => row.Contains(',', StringComparison.Ordinal)).Select(row => string.Join(',', row.Split(',').Select((cell, n) => n == 0 ? cell : "")))];
        using SmallNursery nursery = new(export: week.TrimEnd('\n') + "\n" + string.Join('\n', rows) + "\n");
        Assert.True(ClimateLensProgram.Run("run", nursery.NurseryFile).ExitCode is 0 or 1);
        ProgramRun told = ClimateLensProgram.Run("doctor", nursery.NurseryFile, "--now", "2029-10-27T06:00:00Z");
        Assert.Contains("hold no value of relativeHumidity for 3 days", told.Output, StringComparison.Ordinal);
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
