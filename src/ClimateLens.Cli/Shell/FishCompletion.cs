using System.CommandLine;
using System.Text;

namespace ClimateLens.Cli.Shell;

/// <summary>Completion for fish.</summary>
internal static class FishCompletion
{
    /// <summary>Writes the script.</summary>
    public static string Write(Command root)
    {
        CommandNode[] nodes = [.. CommandNode.Of(root)];
        StringBuilder script = new("# fish completion for climatelens\n");
        foreach (CommandNode node in nodes)
        {
            string condition = Condition(node);
            if (node.Path.Length > 0)
            {
                int cut = node.Path.LastIndexOf(' ');
                CommandNode above = nodes.First(n => n.Path == (cut < 0 ? "" : node.Path[..cut]));
                script.Append($"complete -c climatelens -n '{Condition(above)}{Not(above)}' -a {node.Name} -d {Quoted(node.Description)}\n");
            }

            foreach (OptionNode option in node.Options)
            {
                string names = string.Concat(option.Names.Select(n => n.StartsWith("--", StringComparison.Ordinal) ? $" -l {n[2..]}" : $" -s '{n[1..]}'"));
                string value = option.Value is null ? "" : option.Choices.IsEmpty ? " -r" : $" -x -a '{string.Join(' ', option.Choices)}'";
                script.Append($"complete -c climatelens -n '{condition}'{names}{value} -d {Quoted(option.Description)}\n");
            }
        }

        return script.ToString();
    }

    private static string Condition(CommandNode node) => node.Path.Length == 0 ? "__fish_use_subcommand"
        : string.Join("; and ", node.Path.Split(' ').Select(word => $"__fish_seen_subcommand_from {word}"));

    private static string Not(CommandNode above) => above.Path.Length == 0 ? "" : $"; and not __fish_seen_subcommand_from {string.Join(' ', above.Subcommands)}";

    private static string Quoted(string description) => $"'{CommandNode.FirstLine(description).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
