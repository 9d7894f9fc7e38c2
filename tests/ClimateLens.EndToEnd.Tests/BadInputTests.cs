using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>What a tired person gives the program by mistake: a clear message, the right exit code, nothing half-written.</summary>
public sealed class BadInputTests
{
    [Fact]
    public void NurseryFile_ThatDoesNotExist_Answers66AndNamesIt()
    {
        using SmallNursery nursery = new();
        Expect(66, "nowhere.toml", ClimateLensProgram.Run("run", nursery.PathOf("nowhere.toml")));
    }

    [Fact]
    public void NurseryFile_ThatIsADirectory_Answers66AndSaysSo()
    {
        using SmallNursery nursery = new();
        Expect(66, "folder", ClimateLensProgram.Run("run", nursery.PathOf(".")));
    }

    [Fact]
    public void NurseryFile_WithThreeMistakes_NamesAllThreeWithLineAndMend()
    {
        using SmallNursery nursery = new();
        nursery.Write("nursery.toml", SmallNursery.File()
            .Replace("timeZone =", "timeZon =", StringComparison.Ordinal)
            .Replace("latitude = 53.2", "latitude = \"north\"", StringComparison.Ordinal)
            .Replace("longitude = -0.6", "longitude = 1800", StringComparison.Ordinal));
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile);
        Expect(78, "timeZone", run);
        Assert.All(["nursery.toml:3:", "nursery.toml:4:", "nursery.toml:5:"], place => Assert.Contains(place, run.Error, StringComparison.Ordinal));
        Assert.False(Directory.Exists(nursery.PathOf("store")), "a wrong nursery file must leave nothing behind");
    }

    [Fact]
    public void Zone_ThatDoesNotExist_Answers78WithTheNearest()
    {
        using SmallNursery nursery = new();
        nursery.Write("nursery.toml", SmallNursery.File(zone: "Europe/Lodnon"));
        Expect(78, "Europe/London", ClimateLensProgram.Run("check", nursery.NurseryFile));
    }

    [Fact]
    public void Export_ThatDoesNotExist_Answers78WithItsLine()
    {
        using SmallNursery nursery = new();
        File.Delete(nursery.PathOf("exports/house.csv"));
        Expect(78, "exports/house.csv", ClimateLensProgram.Run("run", nursery.NurseryFile));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Time,Air,RH\n")]
    [InlineData("\0\u0001\u0002PK\u0003\u0004\0\0\0\0binary\0\0")]
    public void Export_WithoutReadings_Answers66AndNamesTheFile(string content)
    {
        using SmallNursery nursery = new(export: content);
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile);
        Expect(66, "exports/house.csv", run);
        Assert.False(File.Exists(nursery.PathOf("site/index.html")));
    }

    [Fact]
    public void Export_ThatIsADirectory_IsAProblemThatNamesIt()
    {
        using SmallNursery nursery = new();
        File.Delete(nursery.PathOf("exports/house.csv"));
        Directory.CreateDirectory(nursery.PathOf("exports/house.csv"));
        ProgramRun run = ClimateLensProgram.Run("check", nursery.NurseryFile);
        Assert.True(run.ExitCode is 1 or 78, run.ToString());
        Assert.Contains("exports/house.csv", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void House_WithoutHumidity_IsReviewedAndSaysWhatIsNotKnown()
    {
        using SmallNursery nursery = new(SmallNursery.AirAlone);
        ProgramRun run = ClimateLensProgram.Run("review", nursery.NurseryFile, "--house", "1", "--week", "2025-W42", "--json");
        Assert.True(run.ExitCode is 0 or 1, run.ToString());
        Assert.Equal(System.Text.Json.JsonValueKind.Null, run.Json.GetProperty("review").GetProperty("riskHours").ValueKind);
        Assert.Contains("humidity", run.Json.GetProperty("review").GetProperty("notKnown").ToString(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Week_WithoutData_Answers66AndSaysWhatThereIs()
    {
        using SmallNursery nursery = new();
        Expect(66, "2025-10-13", ClimateLensProgram.Run("review", nursery.NurseryFile, "--house", "1", "--week", "2024-W01"));
    }

    [Fact]
    public void House_ThatDoesNotExist_Answers66AndListsThem()
    {
        using SmallNursery nursery = new();
        Expect(66, "\"9\"", ClimateLensProgram.Run("review", nursery.NurseryFile, "--house", "9", "--week", "2025-W42"));
    }

    [Fact]
    public void Site_ThatIsAFile_Answers73AndKeepsTheFile()
    {
        using SmallNursery nursery = new();
        nursery.Write("site", "mine");
        Expect(73, "site", ClimateLensProgram.Run("run", nursery.NurseryFile));
        Assert.Equal("mine", File.ReadAllText(nursery.PathOf("site")));
    }

    [Fact]
    public void Store_ThatAnotherRunHolds_Answers75()
    {
        using SmallNursery nursery = new();
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        string lockFile = Directory.EnumerateFiles(nursery.PathOf("store"), "*lock*").Single();
        using FileStream held = new(lockFile, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Expect(75, "another run", ClimateLensProgram.Run("run", nursery.NurseryFile));
    }

    [Fact]
    public void Store_InAFolderOfTheUsers_LeavesTheirFilesAlone()
    {
        using SmallNursery nursery = new();
        nursery.Write("nursery.toml", SmallNursery.File().Replace("elevationM = 18", "elevationM = 18\nstore = \"data\"", StringComparison.Ordinal));
        nursery.Write("data/letters/draft.new", "mine");
        Assert.Equal(0, ClimateLensProgram.Run("run", nursery.NurseryFile).ExitCode);
        Assert.Equal("mine", File.ReadAllText(nursery.PathOf("data/letters/draft.new")));
    }

    [Fact]
    public void StrayStamp_YearsAway_MakesNoPagesOfNothing()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 10, 13), 7) + "2000-01-01 00:00,15.0,80.0\n");
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile, "--json");
        Assert.Equal("2025-W42", Assert.Single(run.Json.GetProperty("houseWeeks").EnumerateArray()).GetProperty("period").GetString());
    }

    [Fact]
    public void House_WhoseReadingsStopped_IsToldAndAnswers1()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 10, 13), 7));
        nursery.Write("exports/other.csv", SmallNursery.Week(new DateTime(2025, 10, 6), 10));
        string other = SmallNursery.File()[SmallNursery.File().IndexOf("[[house]]", StringComparison.Ordinal)..]
            .Replace("id = \"1\"", "id = \"2\"", StringComparison.Ordinal).Replace("House 1", "House 2", StringComparison.Ordinal)
            .Replace("house = \"1\"", "house = \"2\"", StringComparison.Ordinal).Replace("house.csv", "other.csv", StringComparison.Ordinal);
        nursery.Write("nursery.toml", SmallNursery.File() + "\n" + other);
        Expect(1, "House 2 has no whole week 2025-W42: its readings end Wed 2025-10-15 23:50", ClimateLensProgram.Run("run", nursery.NurseryFile));
    }

    [Fact]
    public void NoData_InJson_StillNamesTheCause()
    {
        using SmallNursery nursery = new(export: "Zeit;Temp;RH\n2025-10-13 00:00;15;80\n");
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile, "--json");
        Assert.Equal(66, run.ExitCode);
        Assert.Contains(run.Json.GetProperty("problems").EnumerateArray(), p => p.GetProperty("file").GetString() == "exports/house.csv");
    }

    [Fact]
    public void House_WithoutHumidity_KeepsItsTemperature()
    {
        using SmallNursery nursery = new(SmallNursery.AirAlone);
        ProgramRun run = ClimateLensProgram.Run("review", nursery.NurseryFile, "--house", "1", "--week", "2025-W42", "--json");
        Assert.All(run.Json.GetProperty("review").GetProperty("hours").EnumerateArray(), h => Assert.InRange(h.GetProperty("airTemperatureC").GetDouble(), 13, 23));
    }

    [Fact]
    public void BadRows_AreSetAsideWithTheirLines_AndTheRestIsPublished()
    {
        using SmallNursery nursery = new(export: SmallNursery.Week(new DateTime(2025, 10, 13), 7)
            .Replace("2025-10-14 00:00,", "2025-14-14 00:00,", StringComparison.Ordinal));
        ProgramRun run = ClimateLensProgram.Run("run", nursery.NurseryFile);
        Expect(1, "exports/house.csv:146:", run);
        Assert.True(File.Exists(nursery.PathOf("site/index.html")), run.ToString());
    }

    private static void Expect(int exitCode, string named, ProgramRun run)
    {
        Assert.True(run.ExitCode == exitCode, run.ToString());
        Assert.Contains(named, run.Error, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("   at ClimateLens", run.Error, StringComparison.Ordinal);
    }
}
