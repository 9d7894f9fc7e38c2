using System.Text.RegularExpressions;

namespace ClimateLens.Science.Tests;

public partial class ReferencesTests
{
    [Fact]
    public void Science_EveryKeyItCites_IsInTheListOfSources()
    {
        string root = Root();
        HashSet<string> listed = [.. Keys().Matches(File.ReadAllText(Path.Combine(root, "docs", "references.md"))).Select(m => m.Value)];
        string[] files =
        [
            .. Directory.GetFiles(Path.Combine(root, "src", "ClimateLens.Science"), "*.cs", SearchOption.AllDirectories),
            .. Directory.GetFiles(Path.Combine(root, "docs", "science"), "*.md"),
        ];
        string[] cited = [.. files.SelectMany(file => Keys().Matches(File.ReadAllText(file)).Select(m => m.Value)).Distinct()];
        Assert.True(cited.Length > 20, "The pattern for keys finds hardly any.");
        Assert.Empty(cited.Except(listed));
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ClimateLens.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The repository's root was not found.");
    }

    [GeneratedRegex(@"\[[A-Z][A-Z0-9]{2,}\]")]
    private static partial Regex Keys();
}
