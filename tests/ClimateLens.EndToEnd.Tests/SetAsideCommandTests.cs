using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>climatelens set-aside</c>, and how what it lists is taken up again.</summary>
public sealed class SetAsideCommandTests
{
    private const string Messy = "Time,Air,RH\n2025-10-13 00:00,20,80\n13.10.2025 00:10,20,80\n2025-10-13 00:20,\u00031b[2J,80\n2025-10-13 00:30\n14.10.2025 00:10,21,80\n";

    [Fact]
    public void SetAside_BeforeAnyImport_Is66_AndMakesNoStore()
    {
        using SmallNursery nursery = new();
        ProgramRun run = ClimateLensProgram.Run("set-aside", nursery.NurseryFile);
        Assert.Equal(66, run.ExitCode);
        Assert.Contains("import", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(nursery.PathOf("store")));
    }

    [Fact]
    public void SetAside_CleanStore_SaysNothingIsSetAside()
    {
        using SmallNursery nursery = new();
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        ProgramRun run = ClimateLensProgram.Run("set-aside", nursery.NurseryFile);
        Assert.Equal((0, "Nothing is set aside.\n", ""), (run.ExitCode, run.Output, run.Error));
    }

    [Fact]
    public void SetAside_MessyFile_ListsReasonsAndRows_ForPeopleAndMachines()
    {
        using SmallNursery nursery = new(export: Messy);
        Assert.Equal(1, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        ProgramRun people = ClimateLensProgram.Run("set-aside", nursery.NurseryFile);
        Assert.Equal(0, people.ExitCode);
        Assert.Contains("exports/house.csv (export \"climate\", house 1)\n", people.Output, StringComparison.Ordinal);
        Assert.Contains("2  import.time: The time of the row cannot be read; the row is set aside. Mend: ", people.Output, StringComparison.Ordinal);
        Assert.Contains("  line 3, column 1: \"13.10.2025 00:10\"; expected a time like yyyy-MM-dd HH:mm [import.time]\n", people.Output, StringComparison.Ordinal);
        Assert.Contains("  line 5: \"1 fields\"; expected 3 fields [import.fields]\n", people.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u0003', people.Output);

        JsonElement json = ClimateLensProgram.Run("set-aside", nursery.NurseryFile, "--json", "--reason", "time", "--limit", "1").Json.GetProperty("setAside");
        JsonElement reason = Assert.Single(Assert.Single(json.GetProperty("files").EnumerateArray()).GetProperty("reasons").EnumerateArray());
        Assert.Equal(("import.time", 2), (reason.GetProperty("code").GetString(), reason.GetProperty("count").GetInt32()));
        JsonElement row = Assert.Single(json.GetProperty("rows").EnumerateArray());
        Assert.Equal((3, 1, "13.10.2025 00:10", "13.10.2025 00:10,20,80"), (row.GetProperty("line").GetInt32(), row.GetProperty("column").GetInt32(), row.GetProperty("found").GetString(), row.GetProperty("text").GetString()));
        Assert.Equal(1, json.GetProperty("rowsLeftOff").GetInt32());
    }

    [Fact]
    public void SetAside_CorrectedNurseryFile_AndAnotherImport_TakesTheRowsUp()
    {
        using SmallNursery nursery = new(export: Messy);
        ClimateLensProgram.Run("import", nursery.NurseryFile);
        nursery.Write("nursery.toml", SmallNursery.File().Replace("yyyy-MM-dd HH:mm", "dd.MM.yyyy HH:mm", StringComparison.Ordinal));
        JsonElement import = ClimateLensProgram.Run("import", nursery.NurseryFile, "--json").Json.GetProperty("imports")[0];
        Assert.Equal((5, 2, 3), (import.GetProperty("rowsRead").GetInt32(), import.GetProperty("accepted").GetInt32(), import.GetProperty("setAside").GetInt32()));
        JsonElement json = ClimateLensProgram.Run("set-aside", nursery.NurseryFile, "--json").Json.GetProperty("setAside");
        Assert.Equal([2, 4, 5], json.GetProperty("rows").EnumerateArray().Select(r => r.GetProperty("line").GetInt32()));
        Assert.Equal(0, json.GetProperty("olderFilesLeftOut").GetInt32());
    }

    [Fact]
    public void SetAside_CorrectedExport_ListsTheOlderVersionOnlyWhenAsked()
    {
        using SmallNursery nursery = new(export: Messy);
        ClimateLensProgram.Run("import", nursery.NurseryFile);
        nursery.Write("exports/house.csv", "Time,Air,RH\n2025-10-13 00:00,20,80\n2025-10-13 00:10,20,80\n");
        Assert.Equal(0, ClimateLensProgram.Run("import", nursery.NurseryFile).ExitCode);
        ProgramRun now = ClimateLensProgram.Run("set-aside", nursery.NurseryFile);
        Assert.StartsWith("Nothing is set aside.\n", now.Output, StringComparison.Ordinal);
        Assert.Contains("--all", now.Output, StringComparison.Ordinal);
        Assert.Contains("an older version", ClimateLensProgram.Run("set-aside", nursery.NurseryFile, "--all").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--file", "house.csv", 0)]
    [InlineData("--file", "exports/house.csv", 0)]
    [InlineData("--file", "other.csv", 66)]
    [InlineData("--reason", "import.quotes", 0)]
    [InlineData("--reason", "import.tyme", 64)]
    [InlineData("--limit", "-1", 64)]
    public void SetAside_Options_AnswerWithTheirCode(string option, string value, int code)
    {
        using SmallNursery nursery = new(export: Messy);
        ClimateLensProgram.Run("import", nursery.NurseryFile);
        ProgramRun run = ClimateLensProgram.Run("set-aside", nursery.NurseryFile, option, value);
        Assert.True(run.ExitCode == code, run.ToString());
    }

    [Fact]
    public void Import_Json_HoldsTheSheet_AndSoDoTheReviewAndThePage()
    {
        using SmallNursery nursery = new();
        JsonElement import = ClimateLensProgram.Run("import", nursery.NurseryFile, "--json").Json.GetProperty("imports")[0];
        Assert.Equal((600, 1.0), (import.GetProperty("stepSeconds").GetInt32(), import.GetProperty("stepShare").GetDouble()));
        Assert.Equal(["airTemperature", "relativeHumidity"], import.GetProperty("channels").EnumerateArray().Select(c => c.GetProperty("channel").GetString()));
        Assert.Equal("notKnown", import.GetProperty("clock").GetProperty("verdict").GetString());
        JsonElement review = ClimateLensProgram.Run("review", nursery.NurseryFile, "--house", "1", "--week", "2025-W42", "--json").Json.GetProperty("review");
        JsonElement file = review.GetProperty("imports")[0];
        Assert.Equal("exports/house.csv", file.GetProperty("file").GetString());
        Assert.Equal(600, file.GetProperty("found").GetProperty("stepSeconds").GetInt32());
        Assert.Contains("1,008 rows read", File.ReadAllText(nursery.PathOf("site/house-1/2025-W42/index.html")), StringComparison.Ordinal);
    }
}
