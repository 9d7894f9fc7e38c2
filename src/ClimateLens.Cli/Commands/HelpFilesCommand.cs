using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Cli.Shell;

namespace ClimateLens.Cli.Commands;

/// <summary><c>help-files KIND</c>, hidden: the manual page and what shells complete with, written from the parser's own tree.</summary>
internal static class HelpFilesCommand
{
    /// <summary>Kinds by name.</summary>
    public static IReadOnlyDictionary<string, Func<Command, string>> Kinds { get; } = new SortedDictionary<string, Func<Command, string>>(StringComparer.Ordinal)
    {
        ["bash"] = BashCompletion.Write,
        ["fish"] = FishCompletion.Write,
        ["man"] = root => ManPage.Write(root, ProgramVersion.Number),
        ["powershell"] = PowerShellCompletion.Write,
        ["zsh"] = ZshCompletion.Write,
    };

    public static Command Create(RootCommand root, TextWriter output)
    {
        Command command = new("help-files", "Write the manual page, or the completion of a shell, to stdout.") { Hidden = true };
        Argument<string> kind = new("KIND") { Description = string.Join(", ", Kinds.Keys) };
        kind.AcceptOnlyFromAmong([.. Kinds.Keys]);
        command.Arguments.Add(kind);
        command.SetAction(parsed => output.Write(Kinds[parsed.GetValue(kind)!](root).ReplaceLineEndings("\n")));
        return command;
    }
}
