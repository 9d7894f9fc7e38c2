using System.CommandLine;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Publishing;

namespace ClimateLens.Cli.Commands;

/// <summary><c>build-properties</c>, hidden: what the build of this program as machine code must be told of it (build/package.sh).</summary>
internal static class BuildPropertiesCommand
{
    public static Command Create(TextWriter output)
    {
        Command command = new("build-properties", "Write what a native build of this program must be told.") { Hidden = true };
        command.SetAction(_ => output.WriteLine(
            $"-p:ReviewMaker={Maker.CodeOf(typeof(Review).Assembly)} -p:PageMaker={Maker.CodeOf(typeof(Maker).Assembly)} -p:ProgramMaker={Maker.CodeOf(typeof(BuildPropertiesCommand).Assembly)}"));
        return command;
    }
}
