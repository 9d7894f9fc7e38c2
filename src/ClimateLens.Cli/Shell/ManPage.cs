using System.CommandLine;
using System.Text;

namespace ClimateLens.Cli.Shell;

/// <summary>The manual page, in the man macros of roff.</summary>
internal static class ManPage
{
    /// <summary>Writes it.</summary>
    /// <param name="root">The parser's tree.</param>
    /// <param name="version">Version of the program.</param>
    public static string Write(Command root, string version)
    {
        CommandNode[] nodes = [.. CommandNode.Of(root)];
        StringBuilder page = new();
        page.Append($".TH CLIMATELENS 1 \"\" \"climatelens {Plain(version)}\" \"User Commands\"\n");
        page.Append(".SH NAME\nclimatelens \\- reviews of greenhouse climate from exported readings\n");
        page.Append(".SH SYNOPSIS\n.B climatelens\n.I COMMAND\n.RI [ options ]\n");
        page.Append(".SH DESCRIPTION\n");
        Paragraphs(page, nodes[0].Description);
        page.Append(".SH COMMANDS\n");
        foreach (CommandNode node in nodes.Skip(1))
        {
            string arguments = string.Concat(node.Arguments.Select(a => " " + a.Name));
            page.Append($".SS \"climatelens {Plain(node.Path)}{Plain(arguments)}\"\n");
            Paragraphs(page, node.Description);
            Options(page, node);
        }

        page.Append(".SH OPTIONS\nOf the program itself:\n");
        Options(page, nodes[0]);
        return page.ToString();
    }

    private static void Options(StringBuilder page, CommandNode node)
    {
        foreach (Argument argument in node.Arguments)
        {
            page.Append($".TP\n.I {Plain(argument.Name)}\n{Line(argument.Description ?? "")}\n");
        }

        foreach (OptionNode option in node.Options)
        {
            string value = option.Value is null ? "" : $" \\fI{Plain(option.Value)}\\fR";
            page.Append($".TP\n\\fB{string.Join("\\fR, \\fB", option.Names.Select(Plain))}\\fR{value}\n{Line(option.Description)}\n");
        }
    }

    private static void Paragraphs(StringBuilder page, string text)
    {
        foreach (string part in text.ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries))
        {
            page.Append($".PP\n{Line(string.Join(' ', part.Split(['\n', ' '], StringSplitOptions.RemoveEmptyEntries)))}\n");
        }
    }

    /// <summary>A line of text that is no request of roff.</summary>
    private static string Line(string text) => text.Length == 0 ? "\\&" : (text[0] is '.' or '\'' ? "\\&" : "") + Plain(text);

    private static string Plain(string text) => text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal).Replace("\"", "\\(dq", StringComparison.Ordinal).ReplaceLineEndings(" ");
}
