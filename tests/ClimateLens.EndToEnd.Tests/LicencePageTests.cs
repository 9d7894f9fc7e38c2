using System.Text.Json;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>docs/licences.md names each package that the program carries, with its version.</summary>
public sealed class LicencePageTests
{
    [Fact]
    public void Licences_NameEveryPackageOfTheProgram()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/licences.md"));
        using JsonDocument dependencies = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "climatelens.deps.json")));
        string[] packages =
        [
            .. dependencies.RootElement.GetProperty("libraries").EnumerateObject()
                .Where(l => l.Value.GetProperty("type").GetString() == "package")
                .Select(l => l.Name.Split('/')).Select(p => $"| {p[0]} | {p[1]} |"),
        ];
        Assert.True(packages.Length > 20);
        Assert.Equal([], packages.Where(p => !page.Contains(p, StringComparison.Ordinal)));
    }
}
