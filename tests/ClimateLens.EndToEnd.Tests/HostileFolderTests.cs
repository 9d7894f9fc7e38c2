using System.IO.Compression;
using System.Text;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>Folders and archives made to lead astray, and a run with little memory.</summary>
public sealed class HostileFolderTests : IDisposable
{
    private readonly SmallNursery _nursery = new();

    [Theory]
    [InlineData("../../escaped.csv")]
    [InlineData("/climatelens-escaped.csv")]
    [InlineData("..\\..\\escaped.csv")]
    public void Archive_EntryThatLeadsOutOfItsFolder_IsReadAndNothingIsWrittenThere(string entry)
    {
        using (ZipArchive zip = ZipFile.Open(_nursery.PathOf("exports/house.zip"), ZipArchiveMode.Create))
        {
            using Stream to = zip.CreateEntry(entry).Open();
            to.Write(Encoding.UTF8.GetBytes(SmallNursery.Week(new DateTime(2025, 10, 13), 7)));
        }

        File.Delete(_nursery.PathOf("exports/house.csv"));
        _nursery.Write("nursery.toml", SmallNursery.File().Replace("exports/house.csv", "exports/*.zip", StringComparison.Ordinal));
        ProgramRun run = ClimateLensProgram.Run("run", _nursery.NurseryFile);
        Assert.True(run.ExitCode is 0 or 1 or 66, run.ToString());
        Assert.False(File.Exists(Path.Combine(Path.GetPathRoot(_nursery.NurseryFile)!, "climatelens-escaped.csv")));
        string above = Path.GetDirectoryName(Path.GetDirectoryName(_nursery.PathOf("nursery.toml"))!)!;
        Assert.Empty(Directory.EnumerateFiles(above, "*escaped*"));
        Assert.Empty(Directory.EnumerateFiles(_nursery.PathOf("."), "escaped.csv", SearchOption.AllDirectories));
    }

    [Fact]
    public void Folder_LinksInACircle_AreNotFollowed()
    {
        Directory.CreateSymbolicLink(_nursery.PathOf("exports/again"), _nursery.PathOf("exports"));
        Directory.CreateSymbolicLink(_nursery.PathOf("exports/up"), _nursery.PathOf("."));
        _nursery.Write("nursery.toml", SmallNursery.File().Replace("exports/house.csv", "exports/**/*.csv", StringComparison.Ordinal));
        ProgramRun run = ClimateLensProgram.Run("run", _nursery.NurseryFile, "--json");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal(1, run.Json.GetProperty("imports").GetArrayLength());
    }

    [Theory]
    [InlineData("1800000")] // 24 MiB
    [InlineData("2800000")] // 40 MiB
    public void Run_WithLittleMemory_EndsWith71_AndTheNextRunWithMoreGoesThrough(string bytes)
    {
        using TemporaryFolder folder = new();
        string nursery = Path.Combine(folder.CopyFolder(Repository.PathOf("sample-logs"), "sample-logs"), "nursery.toml");
        ProgramRun run = ClimateLensProgram.RunWith(new Dictionary<string, string> { ["DOTNET_GCHeapHardLimit"] = bytes }, "run", nursery);
        Assert.True(run.ExitCode == 71, run.ToString());
        Assert.Contains("not enough memory", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("bug", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, ClimateLensProgram.Run("review", nursery, "--house", "2", "--week", "2025-W40").ExitCode);
    }

    public void Dispose() => _nursery.Dispose();
}
