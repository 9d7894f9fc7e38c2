using System.Text.RegularExpressions;
using ClimateLens.TestKit;

namespace ClimateLens.Architecture.Tests;

/// <summary>docs/references.md is the one list of sources: whatever code and documents cite by key stands in it, once.</summary>
public sealed partial class ReferencesTests
{
    private static readonly string List = Repository.PathOf("docs/references.md");

    [Fact]
    public void SourcesAndDocuments_EveryKeyTheyCite_IsInTheListOfSources()
    {
        string[] files =
        [
            .. Directory.GetFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal)),
            .. Directory.GetFiles(Repository.PathOf("docs"), "*.md", SearchOption.AllDirectories).Where(f => f != List),
        ];
        string[] cited = [.. files.SelectMany(file => Keys().Matches(File.ReadAllText(file)).Select(m => m.Value)).Distinct()];
        Assert.True(cited.Length > 35, $"The pattern for keys finds only {cited.Length}.");
        Assert.Empty(cited.Except(Listed()));
    }

    [Fact]
    public void ListOfSources_NamesEachKeyOnce()
        => Assert.Empty(Listed().GroupBy(key => key).Where(g => g.Count() > 1).Select(g => g.Key));

    /// <summary>Keys of the rows, not those that a row mentions.</summary>
    private static IEnumerable<string> Listed()
        => File.ReadLines(List).Select(line => RowKey().Match(line)).Where(m => m.Success).Select(m => m.Groups[1].Value);

    [GeneratedRegex(@"\[[A-Z][A-Z0-9]{2,}\]")]
    private static partial Regex Keys();

    [GeneratedRegex(@"^\| (\[[A-Z][A-Z0-9]{2,}\]) \|")]
    private static partial Regex RowKey();
}
