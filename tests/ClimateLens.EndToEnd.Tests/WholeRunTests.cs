using System.Security.Cryptography;
using System.Text.Json;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;
using Json.Schema;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The README's first command on the sample logs, in a copy of the folder.</summary>
public sealed class WholeRunTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _nursery;

    public WholeRunTests() => _nursery = Path.Combine(_folder.CopyFolder(Repository.PathOf("sample-logs"), "sample-logs"), "nursery.toml");

    [Fact]
    public void Run_OnTheSample_PublishesTenWeeksOfTwoHouses_AndTheSecondRunChangesNothing()
    {
        ProgramRun first = ClimateLensProgram.Run("run", _nursery, "--json");
        Assert.True(first.ExitCode == 0, first.ToString());
        JsonElement[] weeks = [.. first.Json.GetProperty("houseWeeks").EnumerateArray()];
        Assert.Equal(20, weeks.Length);
        Assert.Equal(10, weeks.Count(w => w.GetProperty("house").GetString() == "1"));
        Assert.All(weeks, w => Assert.Equal("new", w.GetProperty("status").GetString()));
        Assert.All(weeks, HasSoundNumbers);
        string site = _folder.PathOf("reports/site");
        Assert.All(weeks, w => Assert.True(File.Exists(Path.Combine(site, w.GetProperty("page").GetString()!))));
        Dictionary<string, string> before = Hashes(_folder.Path);

        ProgramRun second = ClimateLensProgram.Run("run", _nursery, "--json");
        Assert.True(second.ExitCode == 0, second.ToString());
        Assert.All(second.Json.GetProperty("houseWeeks").EnumerateArray(), w => Assert.Equal("unchanged", w.GetProperty("status").GetString()));
        Assert.Equal(before, Hashes(_folder.Path));
    }

    [Fact]
    public void Run_Twice_FromNothing_GivesTheSameBytes()
    {
        Assert.Equal(0, ClimateLensProgram.Run("run", _nursery, "--quiet").ExitCode);
        Dictionary<string, string> first = Hashes(_folder.PathOf("reports/site"));
        Directory.Delete(_folder.PathOf("reports"), recursive: true);
        Directory.Delete(_folder.PathOf("sample-logs/store"), recursive: true);
        Assert.Equal(0, ClimateLensProgram.Run("run", _nursery, "--quiet").ExitCode);
        Assert.Equal(first, Hashes(_folder.PathOf("reports/site")));
    }

    [Fact]
    public void Import_LeavesTheSiteAlone()
    {
        Assert.Equal(0, ClimateLensProgram.Run("import", _nursery, "--quiet").ExitCode);
        Assert.False(Directory.Exists(_folder.PathOf("reports")));
        File.WriteAllText(_folder.PathOf("reports"), "a file where the folder of pages should be");
        Assert.Equal(0, ClimateLensProgram.Run("import", _nursery, "--quiet").ExitCode);
        Assert.Equal(73, ClimateLensProgram.Run("run", _nursery, "--quiet").ExitCode);
    }

    [Fact]
    public void Review_OfTheClockChangeWeek_Has169HoursAndFitsTheSchema()
    {
        ProgramRun run = ClimateLensProgram.Run("review", _nursery, "--house", "1", "--week", "2025-W43", "--json");
        Assert.True(run.ExitCode == 0, run.ToString());
        JsonElement review = run.Json.GetProperty("review");
        Assert.Equal(169, review.GetProperty("coverage").GetProperty("expectedHours").GetInt32());
        Assert.Equal(169, review.GetProperty("hours").GetArrayLength());
        JsonSchema schema = JsonSchema.FromFile(Repository.PathOf("docs/review.schema.json"));
        Assert.True(schema.Evaluate(review).IsValid);
        Assert.True(schema.Evaluate(JsonDocument.Parse(File.ReadAllText(_folder.PathOf("reports/site/house-1/2025-W43/review.json"))).RootElement).IsValid);
    }

    [Fact]
    public void Check_OnTheSample_FindsNothingAndWritesNothing()
    {
        Dictionary<string, string> before = Hashes(_folder.Path);
        ProgramRun run = ClimateLensProgram.Run("check", _nursery);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal(before, Hashes(_folder.Path));
    }

    [Fact]
    public void Units_Us_ChangesWhatPeopleRead_NotTheReview()
    {
        string us = _folder.PathOf("us"), metric = _folder.PathOf("metric");
        Assert.Equal(0, ClimateLensProgram.Run("review", _nursery, "--house", "1", "--week", "2025-W42", "--out", us, "--units", "us").ExitCode);
        Assert.Equal(0, ClimateLensProgram.Run("review", _nursery, "--house", "1", "--week", "2025-W42", "--out", metric).ExitCode);
        Assert.Equal(File.ReadAllText(Path.Combine(metric, "house-1/2025-W42/review.json")), File.ReadAllText(Path.Combine(us, "house-1/2025-W42/review.json")));
        Assert.Contains("°F", File.ReadAllText(Path.Combine(us, "house-1/2025-W42/index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("°F", File.ReadAllText(Path.Combine(metric, "house-1/2025-W42/index.html")), StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private static void HasSoundNumbers(JsonElement week)
    {
        JsonElement risk = week.GetProperty("riskHours");
        double value = risk.GetProperty("value").GetDouble();
        Assert.InRange(value, risk.GetProperty("low").GetDouble(), risk.GetProperty("high").GetDouble());
        Assert.InRange(value, 0, week.GetProperty("hoursWithData").GetInt32());
        Assert.InRange(week.GetProperty("hoursWithData").GetInt32(), 100, week.GetProperty("expectedHours").GetInt32());
    }

    private static Dictionary<string, string> Hashes(string folder) => Directory
        .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Where(f => !f.EndsWith(".lock", StringComparison.Ordinal))
        .ToDictionary(f => Path.GetRelativePath(folder, f), f => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f))));
}
