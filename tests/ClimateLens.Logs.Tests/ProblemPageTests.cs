using System.Text;
using ClimateLens.Logs.SetAside;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests;

public sealed class ProblemPageTests
{
    [Fact]
    public void ProblemPage_ListsEveryCodeWithMeaningAndMend()
    {
        var table = new StringBuilder("| code | severity | what it means | what to do |\n|---|---|---|---|\n");
        foreach (ProblemCode code in ProblemCodes.All)
        {
            table.Append('|').AppendJoin('|', $" `{code.Code}` ", $" {code.Severity.ToString().ToLowerInvariant()} ", $" {code.Meaning} ", $" {code.Mend} ").Append("|\n");
        }

        string page = File.ReadAllText(Repository.PathOf("docs/problems.md")).ReplaceLineEndings("\n");

        Assert.True(page.Contains(table.ToString(), StringComparison.Ordinal), $"docs/problems.md should hold this table:\n{table}");
    }

    [Fact]
    public void Codes_AreDistinct_AndTellInSentences()
    {
        Assert.Equal(ProblemCodes.All.Count, ProblemCodes.All.Select(c => c.Code).Distinct().Count());
        Assert.All(ProblemCodes.All, code => Assert.True(code.Meaning.EndsWith('.') && code.Mend.EndsWith('.'), code.Code));
    }
}
