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
        NurserySettings nursery = Read(request.NurseryPath);
        ImportReport report = ExportChecker.Check(nursery, Session.FolderOf(request.NurseryPath));
        Problem[] problems = [.. nursery.Warnings, .. report.Problems, .. UnreadExports.Of(request.NurseryPath, [.. report.Sheets.Select(sheet => sheet.File), .. report.Problems.Select(problem => problem.File ?? "")])];
        messages.Problems(problems, all: true);
        bool lost = problems.Any(p => p.Severity != Severity.Note);
        return new CommandResult(lost ? ExitCode.DoneWithLoss : ExitCode.Done, [.. problems], report.Sheets, [], null)
        {
            Summary = ImportSummary.Of(report) + (problems.Length == 0 ? $" No problems. Next: climatelens run {request.NurseryPath}" : $" {problems.Length} problem{(problems.Length == 1 ? "" : "s")}, listed above."),
        };
    }

    private static NurserySettings Read(string path)
    {
        try
        {
            return NurseryFileReader.Read(path);
        }
        catch (NurseryFileException fault)
        {
            throw new NurseryFileException(UnreadExports.WithNextStep(path, fault.Problems));
        }
    }
}
