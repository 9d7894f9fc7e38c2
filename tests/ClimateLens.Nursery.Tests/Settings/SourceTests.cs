using System.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>Files that are no TOML text at all.</summary>
public class SourceTests
{
    [Theory]
    [InlineData("")]
    [InlineData("  \r\n\t\n")]
    [InlineData("\uFEFF")]
    public void File_WithNothingInIt_IsCalledEmpty(string text)
        => Assert.Equal(("toml.empty", 1, 1), CodeAndPlace(Assert.Single(NurseryText.ProblemsOf(text))));

    [Fact]
    public void File_WithRemarksOnly_MissesItsThreeTables()
    {
        IReadOnlyList<Problem> problems = NurseryText.ProblemsOf("# my nursery\n");
        Assert.Equal(3, problems.Count);
        Assert.All(problems, p => Assert.Equal("nursery.missingKey", p.Code));
    }

    [Fact]
    public void File_Of50Megabytes_IsRefusedByItsSize()
    {
        Problem problem = Assert.Single(NurseryText.ProblemsOf(new byte[50 * 1024 * 1024]));
        Assert.Equal(("toml.size", 1, 1), CodeAndPlace(problem));
        Assert.Contains("50.0 MB", problem.Found, StringComparison.Ordinal);
        Assert.Contains("1 MB", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void File_OfOneMegabyte_IsRead()
    {
        string text = NurseryText.Smallest + "\n";
        string padded = text + string.Concat(Enumerable.Repeat("# remark\n", ((1024 * 1024) - text.Length) / 9));
        Assert.Equal("Gannet Row", NurseryText.Parse(padded).Name);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void File_InUtf16_IsNamedSo(bool bigEndian, bool mark)
    {
        UnicodeEncoding encoding = new(bigEndian, mark);
        byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes(NurseryText.Smallest)];
        Problem problem = Assert.Single(NurseryText.ProblemsOf(bytes));
        Assert.Equal(("toml.encoding", 1, 1), CodeAndPlace(problem));
        Assert.Contains("UTF-16", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void File_InWindows1252_ShowsTheFirstByteThatIsNoUtf8()
    {
        byte[] bytes = Encoding.Latin1.GetBytes(NurseryText.Smallest.With("Gannet Row", "Mågerækken"));
        Problem problem = Assert.Single(NurseryText.ProblemsOf(bytes));
        Assert.Equal(("toml.encoding", 2, 10), CodeAndPlace(problem));
        Assert.Contains("E5", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Column_AfterLettersBeyondAscii_CountsCharacters()
    {
        IReadOnlyList<Problem> problems = NurseryText.ProblemsOf(NurseryText.Smallest.With("name = \"Gannet Row\"", "name = \"Måge🌱\" x"));
        Assert.Equal(("toml.syntax", 2, 16), CodeAndPlace(Assert.Single(problems)));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a=")]
    public void Value_NestedWithoutEnd_IsASyntaxFault(string opening)
    {
        string deep = NurseryText.Smallest.With("[\"a.csv\"]", string.Concat(Enumerable.Repeat(opening, 100_000)));
        Assert.Contains(NurseryText.ProblemsOf(deep), p => p.Code == "toml.syntax" && p.Line == 14);
    }

    [Fact]
    public void Key_WithAHundredThousandDots_IsOneUnknownKey()
    {
        string deep = "a" + string.Concat(Enumerable.Repeat(".a", 100_000)) + " = 1\n" + NurseryText.Smallest;
        Assert.Equal(("nursery.unknownKey", 1, 1), CodeAndPlace(Assert.Single(NurseryText.ProblemsOf(deep))));
    }

    [Fact]
    public void File_WithOldMacLineEnds_IsASyntaxFault()
        => Assert.Contains(NurseryText.ProblemsOf(NurseryText.Smallest.ReplaceLineEndings("\r")), p => p.Code == "toml.syntax");

    [Fact]
    public void File_WithThousandsOfFaults_ListsAHundredAndCountsTheRest()
    {
        string many = "[nursery]\n" + string.Concat(Enumerable.Range(0, 5000).Select(n => $"zzz{n} = 1\n"));
        IReadOnlyList<Problem> problems = NurseryText.ProblemsOf(many);
        Assert.Equal(101, problems.Count);
        Assert.Equal("nursery.more", problems[^1].Code);
        Assert.Contains("4907", problems[^1].Found, StringComparison.Ordinal); // 5000 unknown, 5 missing keys, 2 missing tables
    }

    private static (string Code, int? Line, int? Column) CodeAndPlace(Problem problem) => (problem.Code, problem.Line, problem.Column);
}
