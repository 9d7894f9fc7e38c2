using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Logs.Starter;

namespace ClimateLens.Cli.Commands;

/// <summary><c>new DIR</c>: the folder of a new nursery.</summary>
internal static class NewCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("new", """
            Make the folder of a new nursery: a nursery file with remarks, folders for exports and notebooks, and schedules for systemd, cron
            and Windows to choose from. Writes over nothing.

            Example: climatelens new my-nursery
            """);
        Argument<string> folder = new("DIR") { Description = "The folder; made where it is not there." };
        Option<bool> json = new("--json") { Description = "Write the result as JSON to stdout, and nothing else there." };
        command.Arguments.Add(folder);
        command.Options.Add(json);
        command.Validators.Add(result =>
        {
            if (result.GetResult(folder) is { } given && !given.Errors.Any() && string.IsNullOrWhiteSpace(result.GetValue(folder)))
            {
                result.AddError("DIR needs a folder name.");
            }
        });
        command.SetAction(parsed =>
        {
            Request request = new(command.Name, parsed.GetValue(folder)!, null, null, parsed.GetValue(json), Quiet: false, Verbose: false);
            return Guard.Run(request, output, error, _ => Run(request.NurseryPath));
        });
        return command;
    }

    private static CommandResult Run(string folder)
    {
        ImmutableArray<string> made = StarterFolder.Make(folder);
        string nursery = Messages.Plain(Path.Combine(folder, "nursery.toml")), quoted = StarterFolder.IsPlain(nursery) ? nursery : $"'{nursery.Replace("'", "'\\''", StringComparison.Ordinal)}'";
        return new CommandResult(ExitCode.Done, [], [], [], null)
        {
            Summary = $"""
                Made in {Messages.Plain(folder)}: {string.Join(", ", made)}.
                Next: fill in the first lines of {nursery}, put an export into exports/, then
                climatelens describe EXPORT --house 1 --add {quoted}
                climatelens check {quoted}
                """ + (StarterFolder.IsPlain(Path.GetFullPath(folder)) ? "" : "\nThe schedules name /srv/nursery: the folder's own name holds marks that schedulers read in ways of their own. Write it there by hand."),
        };
    }
}
