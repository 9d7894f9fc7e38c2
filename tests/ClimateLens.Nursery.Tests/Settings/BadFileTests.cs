using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>
/// Each file of BadFiles has one slip, a few have more. expected.txt says by hand which problem stands where;
/// messages.txt holds what people read, so that a change of wording is seen and judged.
/// </summary>
public class BadFileTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "BadFiles");

    public static TheoryData<string> Names => [.. Directory.GetFiles(Folder, "*.toml").Select(p => Path.GetFileNameWithoutExtension(p)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void BadFile_Read_GivesTheExpectedProblems(string name)
    {
        string[] expected = [.. File.ReadAllLines(Path.Combine(Folder, "expected.txt")).Where(l => l.StartsWith(name + " ", StringComparison.Ordinal))];
        string[] found = [.. ProblemsOf(name).Select(p => $"{name} {p.Line}:{p.Column} {p.Code}")];

        Assert.NotEmpty(expected);
        Assert.Equal(string.Join('\n', expected), string.Join('\n', found));
    }

    [Fact]
    public void BadFiles_Read_GiveTheReviewedMessages()
    {
        string messages = string.Concat(Names.Cast<object[]>().SelectMany(row => ProblemsOf((string)row[0])).Select(p => p + "\n"));
        Assert.Equal(File.ReadAllText(Path.Combine(Folder, "messages.txt")), messages);
    }

    [Fact]
    public void BadFiles_Counted_HoldFortyDistinctFaultsAndMore()
        => Assert.InRange(Names.Count, 100, int.MaxValue);

    internal static IReadOnlyList<Problem> ProblemsOf(string name)
    {
        string file = name + ".toml";
        try
        {
            return NurseryFile.Parse(file, File.ReadAllBytes(Path.Combine(Folder, file))).Warnings;
        }
        catch (NurseryFileException fault)
        {
            return fault.Problems;
        }
    }
}
