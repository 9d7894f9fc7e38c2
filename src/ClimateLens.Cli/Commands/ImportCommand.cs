using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;

namespace ClimateLens.Cli.Commands;

/// <summary><c>import NURSERY</c>: takes new files into the store; makes no pages.</summary>
internal static class ImportCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("import", """
            Read new and changed export files into the store; make no pages. Reading the same file again changes nothing.

            Example: climatelens import sample-logs/nursery.toml
            """);
        CommonOptions common = new(command);
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            return Guard.Run(request, output, error, messages => Run(request, messages));
        });
        return command;
    }

    private static CommandResult Run(Request request, Messages messages)
    {
        using Session session = Session.Open(request, messages);
        ImportReport report = session.Import();
        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, report.Sheets, [], null)
        {
            Summary = ImportSummary.Of(report),
        };
    }
}
