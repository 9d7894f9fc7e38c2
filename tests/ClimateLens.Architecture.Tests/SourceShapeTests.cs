using System.Text.RegularExpressions;
using ClimateLens.TestKit;

namespace ClimateLens.Architecture.Tests;

/// <summary>Files stay small, live where their namespace says, and fetch nothing from the network.</summary>
public sealed partial class SourceShapeTests
{
    private const int MostLines = 400;

    private static readonly string[] CodeFolders = ["src", "tests"];

    [Fact]
    public void SourceFiles_HoldOneIdea()
        => Assert.Empty(Sources().Where(f => File.ReadLines(f).Count() > MostLines).Select(Relative));

    [Fact]
    public void Namespaces_FollowFolders()
    {
        foreach (string file in Sources().Where(f => f.Contains($"{Path.DirectorySeparatorChar}src{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            Match match = NamespaceLine().Match(File.ReadAllText(file));
            if (match.Success)
            {
                string folder = Path.GetRelativePath(Repository.PathOf("src"), Path.GetDirectoryName(file)!).Replace(Path.DirectorySeparatorChar, '.');
                Assert.True(match.Groups[1].Value == folder, $"{Relative(file)} declares {match.Groups[1].Value}");
            }
        }
    }

    [Fact]
    public void Sources_FetchNothingFromTheNetwork()
    {
        string[] ways = ["HttpClient", "WebRequest", "System.Net.Http", "System.Net.Sockets", "SmtpClient", "MailKit"];
        Assert.Equal(
            ["src/ClimateLens.Cli/Mail/MailSettings.cs", "src/ClimateLens.Cli/Mail/Postman.cs"], // what --mail sends; it fetches nothing
            Sources()
                .Where(f => !f.Contains(".Tests", StringComparison.Ordinal))
                .Where(f => ways.Any(way => File.ReadAllText(f).Contains(way, StringComparison.Ordinal)))
                .Select(f => Relative(f).Replace('\\', '/')).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Sources() => CodeFolders
        .SelectMany(folder => Directory.EnumerateFiles(Repository.PathOf(folder), "*.cs", SearchOption.AllDirectories))
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static string Relative(string file) => Path.GetRelativePath(Repository.Root, file);

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();
}
