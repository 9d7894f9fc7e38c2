using System.Text.RegularExpressions;
using ClimateLens.TestKit;

namespace ClimateLens.Architecture.Tests;

/// <summary>docs/problems.md lists the problems that the command line itself raises; those of the import are held by their own test.</summary>
public sealed partial class RunProblemTests
{
    [Fact]
    public void ProblemPage_ListsEveryCodeThatTheCommandLineRaises()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/problems.md"));
        string[] raised =
        [
            .. Directory.GetFiles(Repository.PathOf("src/ClimateLens.Cli"), "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.Contains("/obj/", StringComparison.Ordinal))
                .SelectMany(f => Raised().Matches(File.ReadAllText(f)))
                .Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal),
        ];
        string[] listed = [.. Listed().Matches(page).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(raised);
        Assert.Equal(raised, listed);
    }

    [GeneratedRegex("""new(?: Problem)?\("((?:run|review|report)\.[\w-]+)", Severity""")]
    private static partial Regex Raised();

    [GeneratedRegex(@"^\| `((?:run|review|report)\.[\w-]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
