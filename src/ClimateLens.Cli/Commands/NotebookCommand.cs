using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Logs;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Notebooks;

namespace ClimateLens.Cli.Commands;

/// <summary><c>notebook list|cells|show|new|check</c>: the notebooks that pages are made from.</summary>
internal static class NotebookCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("notebook", """
            Notebooks are Markdown files that say what stands on a page, and in which order. Those of a nursery lie in its notebooks folder and
            stand in place of the built-in ones of the same name, or beside them.

            Example: climatelens notebook new sample-logs/nursery.toml mornings
            """);
        command.Subcommands.Add(List(output, error));
        command.Subcommands.Add(Cells(output, error));
        command.Subcommands.Add(Show(output, error));
        command.Subcommands.Add(New(output, error));
        command.Subcommands.Add(Check(output, error));
        return command;
    }

    private static Command List(TextWriter output, TextWriter error)
    {
        Argument<string?> nursery = Nursery(required: false);
        return Sub("list", "List the notebooks: the built-in ones and, with a nursery file, its own.", output, error, [nursery], parsed => parsed.GetValue(nursery), (folder, _) =>
        {
            IEnumerable<string> lines = folder.Notebooks.All.Values.Select(n => $"{n.Name}\t{NotebookReader.Kinds.Single(k => k.Value == n.For).Key}\t{(n.BuiltIn ? "built in" : n.File)}\t{n.Title}");
            return (string.Join('\n', lines) + "\n", folder.Notebooks.Problems);
        });
    }

    private static Command Cells(TextWriter output, TextWriter error)
        => Sub("cells", "List the cells that notebooks may name, with what each takes, needs and gives.", output, error, [], _ => null, (_, _) =>
        {
            IEnumerable<string> lines = NotebookReader.Kinds.SelectMany(kind => CellCatalogue.Of(kind.Value).Select(c =>
                $"{kind.Key}\t{c.Name}\t{c.Heading}\ttakes {string.Join(", ", c.Parameters.Select(p => p.Name))}\t{(c.Needs.Count == 0 ? "" : $"needs {string.Join(", ", c.Needs)}; ")}gives {c.Gives.ToString().ToLowerInvariant()}"));
            return (string.Join('\n', lines) + "\n", []);
        });

    private static Command Show(TextWriter output, TextWriter error)
    {
        Argument<string> name = Name("Name of the notebook.");
        Argument<string?> nursery = Nursery(required: false);
        return Sub("show", "Write a notebook to stdout.", output, error, [name, nursery], parsed => parsed.GetValue(nursery), (folder, parsed) => (folder.TextOf(parsed.GetValue(name)!), []));
    }

    private static Command New(TextWriter output, TextWriter error)
    {
        Argument<string?> nursery = Nursery(required: true);
        Argument<string> name = Name("Name of the new notebook, which becomes that of its pages.");
        Option<string> from = new("--from") { Description = "Notebook to begin from.", HelpName = "NAME", DefaultValueFactory = _ => "week" };
        Command command = Sub("new", "Write a new notebook into the nursery's notebooks folder, as a copy of another one to be changed.", output, error, [nursery, name], parsed => parsed.GetValue(nursery), (folder, parsed) =>
        {
            string written = folder.Add(parsed.GetValue(name)!, folder.TextOf(parsed.GetValue(from)!));
            return ($"{written}\n", []);
        });
        command.Options.Add(from);
        return command;
    }

    private static Command Check(TextWriter output, TextWriter error)
    {
        Argument<string?> nursery = Nursery(required: true);
        return Sub("check", "Check the nursery's own notebooks: what is wrong stands with file and line.", output, error, [nursery], parsed => parsed.GetValue(nursery), (folder, _) =>
        {
            int own = folder.Notebooks.All.Values.Count(n => !n.BuiltIn);
            return ($"{own} sound of the nursery's own notebooks, {folder.Notebooks.Problems.Select(p => p.File).Distinct().Count()} with faults.\n", folder.Notebooks.Problems);
        });
    }

    private static Command Sub(
        string name, string description, TextWriter output, TextWriter error, Argument[] arguments, Func<ParseResult, string?> nursery, Func<OwnNotebooks, ParseResult, (string Text, ImmutableArray<Problem> Problems)> work)
    {
        Command command = new(name, description);
        foreach (Argument argument in arguments)
        {
            command.Arguments.Add(argument);
        }

        command.SetAction(parsed =>
        {
            string? file = nursery(parsed);
            Request request = new($"notebook {name}", file ?? "", null, null, false, false, true);
            string text = "";
            return Guard.Run(request, output, error, messages =>
            {
                (text, ImmutableArray<Problem> problems) = work(OwnNotebooks.Of(file), parsed);
                messages.Problems(problems);
                return new CommandResult(problems.IsEmpty ? ExitCode.Done : ExitCode.DoneWithLoss, problems, [], [], null);
            }, _ => output.Write(text));
        });
        return command;
    }

    private static Argument<string?> Nursery(bool required) => new("NURSERY") { Description = "The nursery file.", Arity = required ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne };

    private static Argument<string> Name(string what) => new("NAME") { Description = what };

    /// <summary>The notebooks of a nursery, or the built-in ones alone.</summary>
    private sealed record OwnNotebooks(NotebookFolder Notebooks, string Folder)
    {
        public static OwnNotebooks Of(string? nurseryPath)
        {
            if (nurseryPath is null)
            {
                return new OwnNotebooks(NotebookFolder.BuiltIn, "");
            }

            NurserySettings nursery = NurseryFileReader.Read(nurseryPath);
            return new OwnNotebooks(Session.NotebooksOf(nursery, nurseryPath), Session.NotebooksFolder(nursery, nurseryPath));
        }

        public string TextOf(string name)
        {
            string own = Path.Combine(Folder, name + ".md");
            return Folder.Length > 0 && name == Path.GetFileName(name) && File.Exists(own) ? File.ReadAllText(own)
                : BuiltInNotebooks.Names.Contains(name) ? BuiltInNotebooks.TextOf(name)
                : throw new NoDataException($"there is no notebook \"{name}\": {NearestName.Mend(name, [.. Notebooks.All.Keys], "the list command shows them.")}");
        }

        public string Add(string name, string text)
        {
            if (name.Length == 0 || name.Any(c => !char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_')))
            {
                throw new NoDataException($"\"{name}\" cannot be a notebook's name: letters, digits, '-' and '_' can.");
            }

            string file = Path.Combine(Folder, name + ".md");
            Directory.CreateDirectory(Folder);
            using FileStream stream = File.Exists(file) ? throw new NoDataException($"{file} is there already; nothing was changed.") : new FileStream(file, FileMode.CreateNew);
            stream.Write(System.Text.Encoding.UTF8.GetBytes(text));
            return file;
        }
    }
}
