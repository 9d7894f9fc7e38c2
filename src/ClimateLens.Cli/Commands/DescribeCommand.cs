using System.CommandLine;

namespace ClimateLens.Cli.Commands;

/// <summary><c>describe FILE…</c>: looks at exports and drafts how the nursery file may read them.</summary>
internal static class DescribeCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("describe", """
            Look at one or several export files of a kind and draft the [[export]] table that reads them, with the evidence
            for each guess. What the files leave open is marked ASK in the draft, and the exit code is 1.

            Example: climatelens describe exports/house-1-*.csv --house 1
            """);
        Argument<string[]> files = new("FILE") { Description = "Export files of one kind, packed or not; - reads the standard input.", Arity = ArgumentArity.OneOrMore };
        Option<string?> house = new("--house") { Description = "House id that the files belong to.", HelpName = "ID" };
        Option<string?> name = new("--name") { Description = "Name of the export (default: climate, weather, or the kind of record).", HelpName = "NAME" };
        Option<string?> add = new("--add") { Description = "Write the draft into this nursery file.", HelpName = "NURSERY" };
        Option<bool> json = new("--json") { Description = "Write the findings as JSON to stdout, and nothing else there." };
        Option<bool> quiet = new("--quiet", "-q") { Description = "Write only errors." };
        Option<bool> verbose = new("--verbose", "-v") { Description = "Write every problem and note." };
        command.Arguments.Add(files);
        foreach (Option option in (Option[])[house, name, add, json, quiet, verbose])
        {
            command.Options.Add(option);
        }

        command.Validators.Add(result => CheckTexts(result, house, name, add));
        command.SetAction(parsed =>
        {
            Request request = new(command.Name, parsed.GetValue(add) ?? "", null, null, parsed.GetValue(json), parsed.GetValue(quiet), parsed.GetValue(verbose));
            DescribeRun run = new(parsed.GetValue(files)!, parsed.GetValue(house), parsed.GetValue(name), parsed.GetValue(add));
            return Guard.Run(request, output, error, run.Run, result => run.Write(output, request, result));
        });
        return command;
    }

    private static void CheckTexts(System.CommandLine.Parsing.CommandResult result, params Option<string?>[] options)
    {
        foreach (Option<string?> option in options)
        {
            if (CommonOptions.Given(result, option, out string? text) && text!.Trim().Length == 0)
            {
                result.AddError($"{option.Name} needs a text.");
            }
        }
    }
}
