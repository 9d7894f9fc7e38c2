using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;

namespace ClimateLens.Cli.Shell;

/// <summary>A command as shells and manuals see it: taken from the parser's own tree, so that they tell what the parser takes.</summary>
/// <param name="Path">Words that lead to it, without the program's name: <c>notebook list</c>; empty for the program itself.</param>
/// <param name="Description">What it does.</param>
/// <param name="Arguments">Its arguments.</param>
/// <param name="Options">Its options, with those of the commands above it that hold for it too.</param>
/// <param name="Subcommands">Last words of the commands beneath it.</param>
internal sealed record CommandNode(string Path, string Description, ImmutableArray<Argument> Arguments, ImmutableArray<OptionNode> Options, ImmutableArray<string> Subcommands)
{
    /// <summary>The first line of the description.</summary>
    public string Line => FirstLine(Description);

    /// <summary>The last word.</summary>
    public string Name => Path[(Path.LastIndexOf(' ') + 1)..];

    /// <summary>A command and all beneath it, hidden ones left out.</summary>
    public static IEnumerable<CommandNode> Of(Command command, string path = "", ImmutableArray<Option> above = default)
    {
        Command[] inner = [.. command.Subcommands.Where(c => !c.Hidden)];
        Option[] own = [.. command.Options.Where(o => !o.Hidden)];
        ImmutableArray<Option> inherited = above.IsDefault ? [] : above;
        yield return new CommandNode(path, command.Description ?? "", [.. command.Arguments], [.. own.Concat(inherited).Select(OptionNode.Of)], [.. inner.Select(c => c.Name)]);
        ImmutableArray<Option> passed = [.. inherited, .. own.Where(o => o.Recursive)];
        foreach (CommandNode node in inner.SelectMany(c => Of(c, path.Length == 0 ? c.Name : $"{path} {c.Name}", passed)))
        {
            yield return node;
        }
    }

    /// <summary>The first sentence of a text, in one line.</summary>
    public static string FirstLine(string text)
    {
        string line = string.Join(' ', text.Split(['\n', '\r', ' '], StringSplitOptions.RemoveEmptyEntries));
        int end = line.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? line.TrimEnd('.') : line[..end];
    }
}

/// <summary>An option of a command.</summary>
/// <param name="Names">Its names, those with two dashes first.</param>
/// <param name="Description">What it does.</param>
/// <param name="Value">What stands for its value, or null where it takes none.</param>
/// <param name="Choices">Values that it takes; empty where any will do.</param>
internal sealed record OptionNode(ImmutableArray<string> Names, string Description, string? Value, ImmutableArray<string> Choices)
{
    /// <summary>Reads an option of the parser.</summary>
    public static OptionNode Of(Option option)
    {
        // Names in the manner of Windows are understood and not advertised.
        ImmutableArray<string> names = [.. option.Aliases.Prepend(option.Name).Where(n => n.StartsWith('-')).Distinct().OrderByDescending(n => n.StartsWith("--", StringComparison.Ordinal))];
        bool takes = option.Arity.MaximumNumberOfValues > 0 && option.ValueType != typeof(bool) && option.ValueType != typeof(void);
        ImmutableArray<string> choices = takes ? [.. option.GetCompletions(CompletionContext.Empty).Select(c => c.Label)] : [];
        string value = option.HelpName ?? (choices.IsEmpty ? "VALUE" : string.Join('|', choices));
        return new OptionNode(names, option.Description ?? "", takes ? value : null, choices);
    }
}
