using System.Text.Json;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests;

/// <summary>
/// The table of malformed files (tests/data/malformed/cases.json, each file written for this project): how many times are stored, which
/// lines are set aside and why, and what is told.
/// </summary>
public sealed class MalformedFileTests
{
    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    public static TheoryData<string> Files() => [.. Cases().Select(c => c.File)];

    [Theory]
    [MemberData(nameof(Files))]
    public void File_IsReadAsFarAsItGoes_AndTheRestIsNamed(string file)
    {
        MalformedCase expected = Cases().Single(c => c.File == file);
        using var nursery = new TestNursery(TestNursery.Climate
            .Replace("missingValues = [\"-999\"]", $"missingValues = [\"-999\"]\n{expected.Dialect}", StringComparison.Ordinal)
            .Replace("*.csv", file, StringComparison.Ordinal));
        nursery.Write(file, File.ReadAllBytes(Repository.PathOf("tests/data/malformed/" + file)));

        ImportReport report = nursery.Import();

        Assert.Equal(expected.Rows, nursery.Rows().Length);
        Assert.Equal(expected.SetAside.Select(row => $"{row[0]} {row[1]}"), nursery.SetAside().Select(row => $"{row.Line} {row.Code}"));
        Assert.Equal(expected.Problems, report.Problems.Select(p => p.Code).Distinct().Order(StringComparer.Ordinal));
        Assert.All(report.Problems, p => Assert.True(p.File == file && p.Mend.Length > 10, p.ToString()));
        Assert.All(report.Sheets, s => Assert.Equal(s.RowsRead, s.Accepted + s.SetAside + s.Duplicates + s.Blank));
    }

    [Fact]
    public void EveryFileOfTheFolder_StandsInTheTable()
        => Assert.Equal(
            Directory.GetFiles(Repository.PathOf("tests/data/malformed")).Select(Path.GetFileName).Where(f => f != "cases.json").Order(StringComparer.Ordinal),
            Cases().Select(c => c.File).Order(StringComparer.Ordinal));

    private static MalformedCase[] Cases()
        => JsonSerializer.Deserialize<MalformedCase[]>(File.ReadAllBytes(Repository.PathOf("tests/data/malformed/cases.json")), Web)!;

    private sealed record MalformedCase(string File, string About, int Rows, JsonElement[][] SetAside, string[] Problems, string Dialect = "");
}
