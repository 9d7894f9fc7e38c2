using System.CommandLine;
using System.Reflection;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Commands;

/// <summary><c>build-properties</c>, hidden: what other builds of this program must be told of its code (build/package.sh).</summary>
internal static class BuildPropertiesCommand
{
    private static readonly (string Property, Assembly Code)[] Told =
    [
        ("StoreCode", typeof(ReadingStore).Assembly), ("ReviewCode", typeof(Review).Assembly), ("PageCode", typeof(SitePublisher).Assembly), ("ProgramCode", typeof(BuildPropertiesCommand).Assembly),
    ];

    public static Command Create(TextWriter output)
    {
        Command command = new("build-properties", "Write what other builds of this program must be told of its code.") { Hidden = true };
        command.SetAction(_ => output.WriteLine(string.Join(' ', Told.Select(t => $"-p:{t.Property}={CodeAccount.Of(t.Code)}"))));
        return command;
    }
}
