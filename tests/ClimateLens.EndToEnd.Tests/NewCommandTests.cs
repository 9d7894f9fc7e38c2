using System.Xml.Linq;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary><c>climatelens new</c>, and the way from there to a first page.</summary>
public sealed class NewCommandTests : IDisposable
{
    private static readonly string[] Schedules = ["climatelens.service", "climatelens-doctor.service", "climatelens-doctor.timer", "climatelens.timer", "crontab.txt", "windows-task.xml"];
    private readonly TemporaryFolder _folder = new();

    private string Nursery => _folder.PathOf("my/nursery.toml");

    [Fact]
    public void New_ThenDescribeAndRun_LeadsToAPage_AndTheUnfilledFileSaysWhatLacks()
    {
        ProgramRun made = ClimateLensProgram.RunIn(_folder.Path, "new", "my");
        Assert.True(made.ExitCode == 0, made.ToString());
        ProgramRun unfilled = ClimateLensProgram.Run("check", Nursery);
        Assert.Equal(78, unfilled.ExitCode);
        Assert.All((string[])["name", "timeZone", "latitude", "longitude", "elevationM"], key => Assert.Contains(key, unfilled.Error, StringComparison.Ordinal));

        string text = File.ReadAllText(Nursery);
        foreach (string key in (string[])["name", "timeZone", "latitude", "longitude", "elevationM"])
        {
            text = text.Replace($"# {key} =", $"{key} =", StringComparison.Ordinal);
        }

        File.WriteAllText(Nursery, text);
        _folder.Write("my/exports/house-1.csv", SmallNursery.Week(new DateTime(2025, 9, 29), 7).Replace("Air,RH", "Air temperature (°C),RH (%)", StringComparison.Ordinal));
        ProgramRun next = ClimateLensProgram.RunIn(_folder.PathOf("my"), "check", "nursery.toml");
        Assert.Contains("climatelens describe exports/house-1.csv --house ID --add nursery.toml", next.Error, StringComparison.Ordinal);
        ProgramRun described = ClimateLensProgram.Run("describe", _folder.PathOf("my/exports/house-1.csv"), "--house", "1", "--add", Nursery);
        Assert.True(described.ExitCode == 0, described.ToString());
        ProgramRun check = ClimateLensProgram.Run("check", Nursery);
        Assert.Contains("Next: climatelens run", check.Output, StringComparison.Ordinal);
        _folder.Write("my/exports/forgotten.csv", "a,b\n1,2\n");
        ProgramRun forgotten = ClimateLensProgram.Run("check", Nursery);
        Assert.Equal(0, forgotten.ExitCode);
        Assert.Contains("exports/forgotten.csv: note: no [[export]] reads it", forgotten.Error, StringComparison.Ordinal);
        ProgramRun run = ClimateLensProgram.Run("run", Nursery);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.True(File.Exists(_folder.PathOf("my/site/house-1/2025-W40/index.html")));
    }

    [Fact]
    public void New_EveryRemarkThatLooksLikeAKey_IsReadWhenTheSignIsTakenAway()
    {
        ClimateLensProgram.RunIn(_folder.Path, "new", "my");
        string[] lines = [.. File.ReadAllLines(Nursery).Select(l => l.Contains(" = ", StringComparison.Ordinal) || l.Contains("[[", StringComparison.Ordinal) && !l.Contains("[[export", StringComparison.Ordinal) ? l.TrimStart('#', ' ') : l)];
        Assert.Contains("accuracy = 2                 # plus or minus, in %", lines);
        File.WriteAllLines(Nursery, lines);
        ProgramRun check = ClimateLensProgram.Run("check", Nursery);
        Assert.Equal(78, check.ExitCode);
        Assert.Contains("there is no [[export]] table", check.Error, StringComparison.Ordinal);
        Assert.Contains("1 fault.", check.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void New_SomethingIsThere_Is73AndChangesNothing()
    {
        _folder.Write("my/schedules/crontab.txt", "mine");
        ProgramRun made = ClimateLensProgram.RunIn(_folder.Path, "new", "my");
        Assert.Equal(73, made.ExitCode);
        Assert.Equal("mine", File.ReadAllText(_folder.PathOf("my/schedules/crontab.txt")));
        Assert.False(File.Exists(Nursery));
    }

    [Fact]
    public void New_Schedules_NameTheFolder_OrStayAsShippedWhereItsNameIsNotPlain()
    {
        foreach ((string folder, bool named) in ((string, bool)[])[("my", true), ("my 100% own", false)])
        {
            Assert.Equal(0, ClimateLensProgram.RunIn(_folder.Path, "new", folder).ExitCode);
            string service = File.ReadAllText(_folder.PathOf($"{folder}/schedules/climatelens.service"));
            Assert.Equal(named && !OperatingSystem.IsWindows(), service.Contains($"run {_folder.PathOf(folder)}/nursery.toml", StringComparison.Ordinal));
            Assert.Equal(!named || OperatingSystem.IsWindows(), service.Contains("run /srv/nursery/nursery.toml", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Schedules_CallTheProgramAsItIs()
    {
        using SmallNursery nursery = new();
        foreach (string file in Schedules.Where(f => !f.Contains("doctor", StringComparison.Ordinal) && f != "climatelens.timer"))
        {
            string text = File.ReadAllText(Repository.PathOf($"docs/schedules/{file}"));
            string line = text.Split('\n').First(l => l.Contains("--log", StringComparison.Ordinal) && !l.StartsWith('#'));
            string[] args = line[line.IndexOf("run ", StringComparison.Ordinal)..].Split("</")[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            args = [.. args.Select(a => a.Trim('"', '\r').Replace(@"C:\Nursery\", "/srv/nursery/", StringComparison.Ordinal).Replace("/srv/nursery/", nursery.PathOf("") + "/", StringComparison.Ordinal))];
            ProgramRun run = ClimateLensProgram.Run(args);
            Assert.True(run.ExitCode == 0, $"{file}: {run}");
        }

        Assert.Equal(3, File.ReadAllLines(nursery.PathOf("climatelens.log")).Count(l => l.Contains("\"event\":\"run\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void Schedules_RunLaterWhatWasMissed()
    {
        Assert.Contains("\nPersistent=true\n", File.ReadAllText(Repository.PathOf("docs/schedules/climatelens.timer")), StringComparison.Ordinal);
        XElement task = XDocument.Load(Repository.PathOf("docs/schedules/windows-task.xml")).Root!;
        Assert.Equal("true", task.Descendants(task.Name.Namespace + "StartWhenAvailable").Single().Value);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
