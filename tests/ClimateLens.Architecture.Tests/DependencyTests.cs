using System.Xml.Linq;
using ClimateLens.TestKit;

namespace ClimateLens.Architecture.Tests;

/// <summary>Dependencies point one way; each row is a project, what it may reference, and which packages it may use.</summary>
public sealed class DependencyTests
{
    private static readonly Dictionary<string, (string[] Projects, string[] Packages)> Allowed = new()
    {
        ["Science"] = ([], ["MathNet.Numerics", "System.Numerics.Tensors"]),
        ["Nursery"] = (["Science"], ["Tomlyn", "NodaTime"]),
        ["Logs"] = (["Nursery"], ["CsvHelper", "ExcelDataReader", "Parquet.Net", "System.IO.Hashing"]),
        ["Analysis"] = (["Science", "Nursery"], ["MathNet.Numerics"]),
        ["Reports"] = (["Science", "Nursery", "Analysis"], ["Markdig", "Plotly.NET", "Plotly.NET.CSharp", "Fluid.Core"]),
        ["Cli"] = (["Science", "Nursery", "Logs", "Analysis", "Reports"], ["System.CommandLine", "MailKit"]),
    };

    private static readonly string[] CodeFolders = ["src", "tests"];

    private static IEnumerable<string> Names => Directory.GetDirectories(Repository.PathOf("src")).Select(d => Path.GetFileName(d)["ClimateLens.".Length..]);

    public static TheoryData<string> Projects => [.. Names];

    [Fact]
    public void Projects_AreTheOnesOfTheDesign()
        => Assert.Equal(Allowed.Keys.Order(), Names.Order());

    [Theory]
    [MemberData(nameof(Projects))]
    public void ProjectReferences_PointOneWay(string project)
        => Assert.Empty(References(project, "ProjectReference").Select(Name).Except(Allowed[project].Projects));

    [Theory]
    [MemberData(nameof(Projects))]
    public void PackageReferences_AreThoseOfTheLayer(string project)
        => Assert.Empty(References(project, "PackageReference").Except(Allowed[project].Packages));

    [Theory]
    [InlineData("Science", "Pure")]
    [InlineData("Nursery", "Pure")]
    [InlineData("Analysis", "Pure")]
    [InlineData("Logs", "NoClock")]
    [InlineData("Reports", "NoClock")]
    public void BannedSymbols_GuardTheLayer(string project, string list)
    {
        Assert.Equal(list, Load(project).Descendants("BannedSymbols").Single().Value);
        Assert.NotEmpty(File.ReadAllLines(Repository.PathOf($"build/BannedSymbols.{list}.txt")));
    }

    [Fact]
    public void Solution_HoldsEveryProject()
    {
        string solution = File.ReadAllText(Repository.PathOf("ClimateLens.sln"));
        IEnumerable<string> projects = CodeFolders
            .SelectMany(folder => Directory.EnumerateFiles(Repository.PathOf(folder), "*.csproj", SearchOption.AllDirectories))
            .Select(path => Path.GetFileName(path));
        Assert.All(projects, name => Assert.Contains(name, solution, StringComparison.Ordinal));
    }

    private static XDocument Load(string project) => XDocument.Load(Repository.PathOf($"src/ClimateLens.{project}/ClimateLens.{project}.csproj"));

    private static IEnumerable<string> References(string project, string kind)
        => Load(project).Descendants(kind).Select(e => e.Attribute("Include")!.Value);

    private static string Name(string path) => Path.GetFileNameWithoutExtension(path.Replace('\\', '/'))["ClimateLens.".Length..];
}
