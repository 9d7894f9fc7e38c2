using System.CommandLine;
using System.Text;
using ClimateLens.Logs;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Sheets;

namespace ClimateLens.Cli.Commands;

/// <summary><c>sheet</c>: paper for pot checks, as HTML on the standard output.</summary>
internal static class SheetCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("sheet", """
            Print paper for pot checks as one HTML file to the standard output: a day's rounds, or with --pairs a side-by-side round for two
            people. With a nursery file and a house it names benches and rounds.

            Example: climatelens sheet nursery.toml --house 1 --paper letter > sheet.html
            """);
        Argument<string?> nursery = new("NURSERY") { Description = "The nursery file; blank sheets without one.", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> house = new("--house") { Description = "House id from the nursery file (default: its first).", HelpName = "ID" };
        Option<string> paper = new("--paper") { Description = "Paper (default: a4).", DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong("a4", "letter");
        Option<int> pairs = NumberOption.Whole("--pairs", null, CheckSheet.FewestPairs, CheckSheet.MostPairs, $"--pairs needs a number from {CheckSheet.FewestPairs} to {CheckSheet.MostPairs}.");
        (pairs.Description, pairs.HelpName) = ($"Pots of a side-by-side round, {CheckSheet.FewestPairs} to {CheckSheet.MostPairs}.", "N");
        Option<string?> language = new("--lang") { Description = "Language of the sheet (default: the nursery file's)." };
        language.AcceptOnlyFromAmong([.. Language.Codes]);
        command.Options.Add(language);
        command.Arguments.Add(nursery);
        command.Options.Add(house);
        command.Options.Add(paper);
        command.Options.Add(pairs);
        command.SetAction(parsed =>
        {
            Request request = new(command.Name, parsed.GetValue(nursery) ?? "", null, null, false, true, false);
            return Guard.Run(request, output, error, _ =>
            {
                (HouseSettings? named, string code) = House(request.NurseryPath, parsed.GetValue(house));
                using Language.Scope scope = Language.TryGet(parsed.GetValue(language) ?? code, out Language? found) ? found.Use() : Language.English.Use();
                PaperFormat format = parsed.GetValue(paper) == "letter" ? PaperFormat.Letter : PaperFormat.A4;
                output.Write(Encoding.UTF8.GetString(parsed.GetResult(pairs) is not null ? CheckSheet.SideBySide(named, parsed.GetValue(pairs), format) : CheckSheet.ForADay(named, format)));
                return new CommandResult(ExitCode.Done, [], [], [], null);
            });
        });
        return command;
    }

    private static (HouseSettings? House, string Language) House(string path, string? id)
    {
        if (path.Length == 0)
        {
            return id is null ? (null, Language.English.Code) : throw new NoDataException($"House \"{id}\" needs a nursery file that names it: climatelens sheet nursery.toml --house {id}");
        }

        NurserySettings nursery = NurseryFileReader.Read(path);
        HouseSettings house = id is null
            ? nursery.Houses[0]
            : nursery.Houses.FirstOrDefault(h => h.Id == id) ?? throw new NoDataException($"There is no house \"{id}\" in {path}; it has {string.Join(", ", nursery.Houses.Select(h => h.Id))}.");
        return (house, nursery.Language);
    }
}
