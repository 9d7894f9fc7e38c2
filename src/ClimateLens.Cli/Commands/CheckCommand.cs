using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Cli.Commands;

/// <summary><c>check NURSERY</c>: reads everything, changes nothing, prints every problem.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter error) => CommonOptions.Command("check", """
        Read the nursery file and every export, change nothing, and print every problem with file, line, column and mend.

        Example: climatelens check sample-logs/nursery.toml
        """, output, error, Run);

    private static CommandResult Run(Request request, Messages messages)
    {
        NurserySettings nursery = NurseryFileReader.Read(request.NurseryPath);
        ImportReport report = ExportChecker.Check(nursery, Session.FolderOf(request.NurseryPath));
        Problem[] problems = [.. nursery.Warnings, .. report.Problems];
        messages.Problems(problems, all: true);
        bool lost = problems.Any(p => p.Severity != Severity.Note);
        return new CommandResult(lost ? ExitCode.DoneWithLoss : ExitCode.Done, [.. problems], report.Sheets, [], null)
        {
            Summary = ImportSummary.Of(report) + (problems.Length == 0 ? " No problems." : $" {problems.Length} problem{(problems.Length == 1 ? "" : "s")}, listed above."),
        };
    }
}
