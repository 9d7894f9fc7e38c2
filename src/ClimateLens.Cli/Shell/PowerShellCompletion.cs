using System.CommandLine;
using System.Text;

namespace ClimateLens.Cli.Shell;

/// <summary>Completion for PowerShell.</summary>
internal static class PowerShellCompletion
{
    /// <summary>Writes the script.</summary>
    public static string Write(Command root)
    {
        CommandNode[] nodes = [.. CommandNode.Of(root)];
        StringBuilder script = new();
        script.Append("# PowerShell completion for climatelens\nRegister-ArgumentCompleter -Native -CommandName climatelens -ScriptBlock {\n  param($word, $ast, $position)\n");
        script.Append($"  $known = @({string.Join(", ", nodes.Skip(1).Select(n => Quoted(n.Path)))})\n");
        script.Append("""
              $path = ''
              $words = @($ast.CommandElements | Where-Object { $_.Extent.EndOffset -lt $position } | ForEach-Object { $_.ToString() })
              foreach ($part in ($words | Select-Object -Skip 1)) {
                $longer = "$path $part".Trim()
                if ($known -contains $longer) { $path = $longer }
              }
              $offers = switch ("${path}:$($words[-1])") {

            """);
        foreach ((CommandNode node, OptionNode option) in nodes.SelectMany(n => n.Options.Where(o => !o.Choices.IsEmpty).Select(o => (n, o))))
        {
            foreach (string name in option.Names)
            {
                script.Append($"    {Quoted($"{node.Path}:{name}")} {{ {string.Join(", ", option.Choices.Select(Quoted))} }}\n");
            }
        }

        script.Append("  }\n  if (-not $offers) {\n    $offers = switch ($path) {\n");
        foreach (CommandNode node in nodes)
        {
            script.Append($"      {Quoted(node.Path)} {{ {string.Join(", ", node.Subcommands.Concat(node.Options.SelectMany(o => o.Names)).Select(Quoted))} }}\n");
        }

        script.Append("    }\n  }\n  $offers | Where-Object { $_ -like \"$word*\" } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }\n}\n");
        return script.ToString();
    }

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
}
