using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;

namespace ClimateLens.Cli.Commands;

/// <summary><c>import NURSERY</c>: takes new files into the store; makes no pages.</summary>
internal static class ImportCommand
{
    public static Command Create(TextWriter output, TextWriter error) => CommonOptions.Command("import", """
        Read new and changed export files into the store; make no pages. Reading the same file again changes nothing.

        Example: climatelens import sample-logs/nursery.toml
        """, output, error, Run);

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
