using System.Diagnostics;
using ClimateLens.Cli;
using ClimateLens.Cli.Commands;
using ClimateLens.Cli.Shell;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The manual page and the completions hold what the parser takes.</summary>
public sealed class HelpFilesTests
{
    private static readonly CommandNode[] Nodes = [.. CommandNode.Of(CommandLine.Root(TextWriter.Null, TextWriter.Null))];

    public static TheoryData<string> Kinds => [.. HelpFilesCommand.Kinds.Keys];

    [Fact]
    public void Tree_HoldsTheCommands_AndNotTheHiddenOnes()
    {
        Assert.Contains(Nodes, n => n.Path == "notebook list");
        Assert.Contains(Nodes.Single(n => n.Path == "run").Options, o => o.Names.Contains("--jobs") && o.Value == "N");
        Assert.Contains(Nodes.Single(n => n.Path == "run").Options, o => o.Names.Contains("--help"));
        Assert.Equal(["metric", "us"], Nodes.Single(n => n.Path == "run").Options.Single(o => o.Names.Contains("--units")).Choices.Order());
        Assert.DoesNotContain(Nodes, n => n.Path == "help-files" || n.Options.Any(o => o.Names.Contains("--now")));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void HelpFile_HoldsEachCommandAndOption(string kind)
    {
        ProgramRun run = ClimateLensProgram.Run("help-files", kind);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        foreach (CommandNode node in Nodes.Skip(1))
        {
            string part = PartOf(kind, run.Output, node);
            Assert.True(part.Length > 0, $"{kind} lacks {node.Path}");
            Assert.All(node.Options.SelectMany(o => o.Names), name => Assert.Contains(AsWritten(kind, name), part, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("re", "review")]
    [InlineData("run nursery.toml --j", "--jobs --json")]
    [InlineData("run --units ", "metric us")]
    [InlineData("notebook l", "list")]
    [InlineData("notebook list --h", "--help")]
    public void Bash_CompletesWords(string typed, string offered)
    {
        using TemporaryFolder folder = new();
        string script = folder.Write("completion", ClimateLensProgram.Run("help-files", "bash").Output);
        string[] words = ["climatelens", .. typed.Split(' ')];
        string ask = $"source '{script}'; COMP_WORDS=({string.Join(' ', words.Select(w => $"'{w}'"))}); COMP_CWORD={words.Length - 1}; _climatelens; echo \"${{COMPREPLY[*]}}\"";
        using Process bash = Process.Start(new ProcessStartInfo("bash", ["--norc", "-c", ask]) { RedirectStandardOutput = true })!;
        string answer = bash.StandardOutput.ReadToEnd();
        bash.WaitForExit();
        Assert.Equal(offered, string.Join(' ', answer.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void Version_TellsVersionCommitAndZones()
    {
        ProgramRun run = ClimateLensProgram.Run("--version");
        Assert.Equal(0, run.ExitCode);
        Assert.Matches(@"^climatelens \d+\.\d+\.\d+[^\n]*\ncommit ([0-9a-f]{40}|not known)\ntime-zone data \d{4}[a-z]\n$", run.Output);
    }

    /// <summary>The part of a help file that is of one command.</summary>
    private static string PartOf(string kind, string text, CommandNode node) => kind switch
    {
        "man" => Between(text, $".SS \"climatelens {node.Path.Replace("-", "\\-", StringComparison.Ordinal)}", ".S"),
        "fish" => string.Join('\n', text.Split('\n').Where(l => l.Contains($"-n '{string.Join("; and ", node.Path.Split(' ').Select(w => $"__fish_seen_subcommand_from {w}"))}'", StringComparison.Ordinal))),
        "powershell" => Between(text[text.IndexOf("switch ($path)", StringComparison.Ordinal)..], $"      '{node.Path}' {{", "}"),
        _ => Between(text, kind == "bash" ? $"    \"{node.Path}\") options" : $"    (\"{node.Path}\") options", ";;"),
    };

    private static string Between(string text, string start, string end)
    {
        int from = text.IndexOf(start, StringComparison.Ordinal);
        if (from < 0)
        {
            return "";
        }

        int to = text.IndexOf(end, from + start.Length, StringComparison.Ordinal);
        return to < 0 ? text[from..] : text[from..to];
    }

    private static string AsWritten(string kind, string name) => kind switch
    {
        "man" => name.Replace("-", "\\-", StringComparison.Ordinal),
        "fish" => name.StartsWith("--", StringComparison.Ordinal) ? $"-l {name[2..]}" : $"-s '{name[1..]}'",
        _ => name,
    };
}
