using System.CommandLine;
using System.Text;

namespace ClimateLens.Cli.Shell;

/// <summary>Completion for zsh.</summary>
internal static class ZshCompletion
{
    /// <summary>Writes the script, for a file named <c>_climatelens</c> on the function path.</summary>
    public static string Write(Command root)
    {
        CommandNode[] nodes = [.. CommandNode.Of(root)];
        StringBuilder script = new();
        script.Append("#compdef climatelens\n_climatelens() {\n  local route=\"\" previous=\"${words[CURRENT-1]}\"\n  local -a options commands\n  integer i\n");
        script.Append("  for ((i = 2; i < CURRENT; i++)); do\n    case \"${route:+$route }${words[i]}\" in\n");
        script.Append($"      ({string.Join('|', nodes.Skip(1).Select(n => $"\"{n.Path}\""))}) route=\"${{route:+$route }}${{words[i]}}\" ;;\n    esac\n  done\n  case \"$route:$previous\" in\n");
        foreach ((CommandNode node, OptionNode option) in nodes.SelectMany(n => n.Options.Where(o => !o.Choices.IsEmpty).Select(o => (n, o))))
        {
            script.Append($"    ({string.Join('|', option.Names.Select(n => $"\"{node.Path}:{n}\""))}) compadd -- {string.Join(' ', option.Choices)}; return ;;\n");
        }

        script.Append("  esac\n  case \"$route\" in\n");
        foreach (CommandNode node in nodes)
        {
            string options = string.Join(' ', node.Options.SelectMany(o => o.Names.Select(n => Entry(n, o.Description))));
            string commands = string.Join(' ', node.Subcommands.Select(s => Entry(s, nodes.First(n => n.Path == (node.Path.Length == 0 ? s : $"{node.Path} {s}")).Description)));
            script.Append($"    (\"{node.Path}\") options=({options}) commands=({commands}) ;;\n");
        }

        script.Append("  esac\n  if [[ ${words[$CURRENT]} == -* ]]; then\n    _describe 'option' options\n  else\n    (( ${#commands} )) && _describe 'command' commands\n    (( ${#commands} )) || _files\n  fi\n}\n_climatelens \"$@\"\n");
        return script.ToString();
    }

    private static string Entry(string name, string description)
        => $"'{name}:{CommandNode.FirstLine(description).Replace("'", "'\\''", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal)}'";
}
