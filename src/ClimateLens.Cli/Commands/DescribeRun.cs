using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Logs.Describe;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Cli.Commands;

/// <summary>One run of <c>describe</c>.</summary>
/// <param name="files">The files.</param>
/// <param name="house">House that the user gave, or null.</param>
/// <param name="name">Export name that the user gave, or null.</param>
/// <param name="add">Nursery file to write the draft into, or null.</param>
internal sealed class DescribeRun(string[] files, string? house, string? name, string? add)
{
    private Description? _description;
    private bool _added;

    /// <summary>Describes the files and, where asked, writes the draft into the nursery file.</summary>
    public CommandResult Run(Messages messages)
    {
        DescribeOptions options = new(house, name) { Input = Console.OpenStandardInput };
        if (add is not null)
        {
            (string[] houses, string? zone) = NurseryFileReader.Outline(add);
            options = options with { Houses = [.. houses], Folder = Session.FolderOf(add), TimeZone = zone };
        }

        Description description = FileDescriber.Describe(files, options);
        _description = description;
        messages.Problems(description.Problems, all: true);
        if (description.Exports.IsEmpty)
        {
            return CommandResult.Failed(CodeOf(description), description.Problems);
        }

        bool failed = description.Problems.Any(p => p.Severity == Severity.Error);
        if (add is not null && !failed)
        {
            _added = Add(add, description, messages);
        }

        Tell(description, messages);
        bool open = failed || description.Questions > 0 || description.Problems.Any(p => p.Severity == Severity.Warning) || (add is not null && !_added);
        return new CommandResult(open ? ExitCode.DoneWithLoss : ExitCode.Done, description.Problems, [], [], null);
    }

    /// <summary>Writes the draft, or all findings as JSON.</summary>
    public void Write(TextWriter output, Request request, CommandResult result)
    {
        if (request.Json)
        {
            DescribeJson.Write(output, result, _description, _added);
        }
        else if (_description is not null && !_added)
        {
            output.Write(_description.Toml);
        }
    }

    private static bool Add(string nursery, Description description, Messages messages)
    {
        if (description.Exports.Any(e => e.IsBlocked))
        {
            messages.Error($"{nursery} was not changed: the draft asks what only you can tell. Answer it in the draft and put it into the file by hand.");
            return false;
        }

        NurseryFileWriter.AddExports(nursery, description.Toml);
        return true;
    }

    private void Tell(Description description, Messages messages)
    {
        foreach (DraftExport export in description.Exports)
        {
            string asks = export.Questions == 0 ? "" : $", {export.Questions} {(export.Questions == 1 ? "question" : "questions")} marked ASK";
            messages.Say($"{export.Name}: {export.Columns.Length} columns, {export.Unused.Length} not used{asks}. {export.Summary}");
        }

        if (_added)
        {
            messages.Say($"Written into {add}. See it through: climatelens check {add}");
        }
    }

    private static int CodeOf(Description description)
        => description.Problems.Any(p => p.Code is "import.unreadable") ? ExitCode.CannotRead : ExitCode.NoData;
}
