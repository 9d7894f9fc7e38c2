using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Cli.Commands;

/// <summary>The argument and options that every command takes.</summary>
internal sealed class CommonOptions
{
    private readonly Argument<string> _nursery = new("NURSERY") { Description = "The nursery file, for example sample-logs/nursery.toml." };

    private readonly Option<string?> _out = new("--out")
    {
        Description = "Folder for the pages (default: the nursery file's site).",
        HelpName = "DIR",
    };

    private readonly Option<string?> _units = new("--units") { Description = "Units that people read (default: the nursery file's)." };

    private readonly Option<string?> _language = new("--lang") { Description = "Language of the pages (default: the nursery file's)." };

    private readonly Option<string[]> _format = new("--format") { Description = "Formats of the pages: html always, ipynb (Jupyter notebook) where asked for.", AllowMultipleArgumentsPerToken = false };

    private readonly Option<bool> _singleFile = new("--single-file") { Description = "Put each page as one file to mail beside it too." };

    private readonly Option<bool> _json = new("--json") { Description = "Write the result as JSON to stdout, and nothing else there." };

    private readonly Option<bool> _quiet = new("--quiet", "-q") { Description = "Write only errors, and warnings after which a page or a letter is missing." };

    private readonly Option<bool> _verbose = new("--verbose", "-v") { Description = "Write every problem and note, and what was done." };

    /// <summary>Adds them to a command.</summary>
    public CommonOptions(Command command)
    {
        _units.AcceptOnlyFromAmong("metric", "us");
        _format.AcceptOnlyFromAmong("html", "ipynb");
        _language.AcceptOnlyFromAmong([.. Language.Codes]);
        command.Arguments.Add(_nursery);
        command.Options.Add(_out);
        command.Options.Add(_units);
        command.Options.Add(_language);
        command.Options.Add(_format);
        command.Options.Add(_singleFile);
        command.Options.Add(_json);
        command.Options.Add(_quiet);
        command.Options.Add(_verbose);
        command.Validators.Add(result =>
        {
            if (Given(result, _quiet) && Given(result, _verbose))
            {
                result.AddError("--quiet and --verbose contradict each other.");
            }

            if (Given(result, _out, out string? folder) && folder!.Trim().Length == 0)
            {
                result.AddError("--out needs a folder name.");
            }
        });
    }

    /// <summary>An option's value in a validator; false where it is not given or itself at fault, which the parser tells by itself.</summary>
    public static bool Given(System.CommandLine.Parsing.CommandResult result, Option<string?> option, out string? value)
    {
        bool sound = result.GetResult(option) is { } given && !given.Errors.Any() && given.Tokens.Count == 1;
        value = sound ? result.GetValue(option) : null;
        return sound;
    }

    private static bool Given(System.CommandLine.Parsing.CommandResult result, Option<bool> option)
        => result.GetResult(option) is { } given && !given.Errors.Any() && result.GetValue(option);

    /// <summary>A command that takes no more than these.</summary>
    public static Command Command(string name, string description, TextWriter output, TextWriter error, Func<Request, Messages, CommandResult> run)
    {
        Command command = new(name, description);
        CommonOptions common = new(command);
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            return Guard.Run(request, output, error, messages => run(request, messages));
        });
        return command;
    }

    /// <summary>Reads what the user gave.</summary>
    public Request Read(ParseResult parsed) => new(
        parsed.CommandResult.Command.Name,
        parsed.GetValue(_nursery) ?? "",
        parsed.GetValue(_out),
        parsed.GetValue(_units) switch { "us" => UnitSystem.Us, "metric" => UnitSystem.Metric, _ => null },
        parsed.GetValue(_json),
        parsed.GetValue(_quiet),
        parsed.GetValue(_verbose),
        parsed.GetValue(_language))
    {
        Ipynb = parsed.GetValue(_format)?.Contains("ipynb") == true,
        SingleFile = parsed.GetValue(_singleFile),
    };
}

/// <summary>What every command was asked.</summary>
/// <param name="Command">Name of the command.</param>
/// <param name="NurseryPath">Path of the nursery file.</param>
/// <param name="Out">Site folder that overrules the nursery file's, or null.</param>
/// <param name="Units">Units that overrule the nursery file's, or null.</param>
/// <param name="Json">Machine-readable result on stdout.</param>
/// <param name="Quiet">Only errors.</param>
/// <param name="Verbose">Everything.</param>
/// <param name="Language">Code of a language that overrules the nursery file's, or null.</param>
internal sealed record Request(string Command, string NurseryPath, string? Out, UnitSystem? Units, bool Json, bool Quiet, bool Verbose, string? Language = null)
{
    /// <summary>Whether pages are wanted as Jupyter notebooks too.</summary>
    public bool Ipynb { get; init; }

    /// <summary>Whether pages are wanted as one file too.</summary>
    public bool SingleFile { get; init; }
}
