using System.CommandLine;
using System.Text;

namespace ClimateLens.Cli.Shell;

/// <summary>Completion for bash.</summary>
internal static class BashCompletion
{
    /// <summary>Writes the script.</summary>
    public static string Write(Command root)
    {
        CommandNode[] nodes = [.. CommandNode.Of(root)];
        StringBuilder script = new();
        script.Append("""
            # bash completion for climatelens
            _climatelens() {
              local cur="${COMP_WORDS[COMP_CWORD]}" prev="${COMP_WORDS[COMP_CWORD-1]}" path="" options="" commands="" i
              for ((i = 1; i < COMP_CWORD; i++)); do
                case "${path:+$path }${COMP_WORDS[i]}" in

            """);
        script.Append($"      {string.Join('|', nodes.Skip(1).Select(n => $"\"{n.Path}\""))}) path=\"${{path:+$path }}${{COMP_WORDS[i]}}\" ;;\n    esac\n  done\n  case \"$path:$prev\" in\n");
        foreach ((CommandNode node, OptionNode option) in nodes.SelectMany(n => n.Options.Where(o => !o.Choices.IsEmpty).Select(o => (n, o))))
        {
            script.Append($"    {string.Join('|', option.Names.Select(n => $"\"{node.Path}:{n}\""))}) COMPREPLY=($(compgen -W \"{string.Join(' ', option.Choices)}\" -- \"$cur\")); return ;;\n");
        }

        script.Append("  esac\n  case \"$path\" in\n");
        foreach (CommandNode node in nodes)
        {
            script.Append($"    \"{node.Path}\") options=\"{string.Join(' ', node.Options.SelectMany(o => o.Names))}\" commands=\"{string.Join(' ', node.Subcommands)}\" ;;\n");
        }

        script.Append("""
              esac
              if [[ $cur == -* ]]; then
                COMPREPLY=($(compgen -W "$options" -- "$cur"))
              else
                COMPREPLY=($(compgen -W "$commands" -- "$cur"))
              fi
            }
            complete -o default -F _climatelens climatelens

            """);
        return script.ToString();
    }
}
