using System.CommandLine;
using System.CommandLine.Parsing;
using ClimateLens.Cli.Commands;
using ClimateLens.Cli.Output;

namespace ClimateLens.Cli;

/// <summary>Parses the arguments, calls the command and turns what happened into an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line; answers with its exit code.</summary>
    public static int Invoke(string[] args, TextWriter output, TextWriter error)
    {
        RootCommand root = Root(output, error);

        // No response files: an argument that begins with '@' is a name like any other.
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (args.Length == 0)
        {
            root.Parse(["--help"]).Invoke(Quietly(error, error));
            return ExitCode.WrongCommandLine;
        }

        if (parsed.Errors.Count > 0 && !AsksForHelp(args))
        {
            WriteUsageErrors(parsed, error);
            return ExitCode.WrongCommandLine;
        }

        try
        {
            int code = parsed.Invoke(Quietly(output, error));
            output.Flush();
            return code;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Nobody can read what was to be said (a full disk behind stdout, a closed pipe); the work itself is done.
            return ExitCode.CannotRead;
        }
    }

    /// <summary>The parser's tree.</summary>
    public static RootCommand Root(TextWriter output, TextWriter error)
    {
        RootCommand root = new("""
            Reads the exports of a greenhouse climate computer and writes a review page for each house and week.

            Example: climatelens run sample-logs/nursery.toml

            Exit codes: 0 done; 1 done, but something was set aside, skipped or failed for one house;
            64 the command line is wrong; 66 no data for what was asked; 70 a bug; 71 not enough memory; 73 or 74 cannot write or read;
            75 another run holds the store, try again; 78 the nursery file is wrong.
            """);
        foreach (Command command in All(output, error))
        {
            root.Subcommands.Add(command);
        }

        root.Subcommands.Add(HelpFilesCommand.Create(root, output));
        root.Subcommands.Add(BuildPropertiesCommand.Create(output));
        foreach (VersionOption version in root.Options.OfType<VersionOption>())
        {
            version.Description = "Print version, commit and the version of the time-zone data.";
            version.Action = new VersionAction(output);
        }

        return root;
    }

    private static IEnumerable<Command> All(TextWriter output, TextWriter error) =>
    [
        RunCommand.Create(output, error),
        PlanCommand.Create(output, error),
        FinishCommand.Create(output, error),
        ReviewCommand.Create(output, error),
        ImportCommand.Create(output, error),
        NewCommand.Create(output, error),
        CheckCommand.Create(output, error),
        NotebookCommand.Create(output, error),
        DoctorCommand.Create(output, error),
        CompareCommand.Create(output, error),
        SetAsideCommand.Create(output, error),
        DescribeCommand.Create(output, error),
        DrenchCommand.Create(output),
        SheetCommand.Create(output, error),
    ];

    // The library's own handler would answer a bug with exit code 1; Guard answers with 70.
    private static InvocationConfiguration Quietly(TextWriter output, TextWriter error)
        => new() { Output = output, Error = error, EnableDefaultExceptionHandler = false };

    private static bool AsksForHelp(string[] args) => args.Any(a => a is "--help" or "-h" or "-?" or "/?" or "/h");

    private static void WriteUsageErrors(ParseResult parsed, TextWriter error)
    {
        foreach (ParseError fault in parsed.Errors)
        {
            error.WriteLine($"climatelens: {Messages.Plain(fault.Message)}");
        }

        string command = "";
        for (SymbolResult? at = parsed.CommandResult; at is System.CommandLine.Parsing.CommandResult { Command: not RootCommand } named; at = at.Parent)
        {
            command = $" {named.Command.Name}{command}"; // of "notebook list" both words
        }

        error.WriteLine($"See: climatelens{command} --help");
    }

    private sealed class VersionAction(TextWriter output) : System.CommandLine.Invocation.SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            output.WriteLine(ProgramVersion.Text);
            return ExitCode.Done;
        }
    }
}
