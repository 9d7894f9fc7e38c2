using System.CommandLine;
using ClimateLens.Logs;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Cli.Commands;

/// <summary><c>set-aside NURSERY</c>: lists what imports set aside; reads the store and changes nothing.</summary>
internal static class SetAsideCommand
{
    private const int UsualLimit = 50;

    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("set-aside", """
            List the rows and values that imports could not use: by file and reason, then one by one. Changes nothing. Correct the nursery file
            or the export and import again: the rows are taken up then.

            Example: climatelens set-aside sample-logs/nursery.toml --reason import.time
            """);
        CommonOptions common = new(command);
        Option<string?> file = new("--file") { Description = "Only this file, by its path as listed or its name.", HelpName = "FILE" };
        Option<string?> reason = new("--reason") { Description = "Only this reason, by its code as listed.", HelpName = "CODE" };
        Option<int> limit = NumberOption.Whole("--limit", UsualLimit, 0, int.MaxValue, "--limit is a number of rows, 0 or more.");
        (limit.Description, limit.HelpName) = ("Most rows listed; 0 lists them all.", "N");
        Option<bool> all = new("--all") { Description = "Also what was set aside of older versions of a file." };
        command.Options.Add(file);
        command.Options.Add(reason);
        command.Options.Add(limit);
        command.Options.Add(all);
        command.Validators.Add(result =>
        {
            if (CommonOptions.Given(result, reason, out string? code) && CodeOf(code!) is null)
            {
                string[] codes = [.. ProblemCodes.All.Select(c => c.Code)];
                result.AddError($"--reason \"{code}\" is not known: {NearestName.Mend(code!, codes, "the list without --reason shows those that occur.")}");
            }
        });
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            string? code = parsed.GetValue(reason) is string text ? CodeOf(text) : null;
            SetAsideQuery query = new(parsed.GetValue(file), code, parsed.GetValue(limit), parsed.GetValue(all));
            return Guard.Run(request, output, error, _ => Run(request, query));
        });
        return command;
    }

    /// <summary>A code as written, or with the part before the point left out; null for one that is not known.</summary>
    private static string? CodeOf(string text)
        => ProblemCodes.All.FirstOrDefault(c => c.Code == text || c.Code.EndsWith("." + text, StringComparison.Ordinal))?.Code;

    private static CommandResult Run(Request request, SetAsideQuery query)
    {
        NurserySettings nursery = NurseryFileReader.Read(request.NurseryPath);
        string folder = Session.FolderOf(request.NurseryPath);
        if (!ReadingStore.Exists(nursery, folder))
        {
            throw new NoDataException("nothing was imported yet: run the import command first.");
        }

        using ReadingStore store = ReadingStore.Open(nursery, folder);
        SetAsideListing listing = SetAsideListing.Of(store.SetAside, query);
        if (query.File is string name && listing.Files.IsEmpty && !store.Sheets.Any(s => SetAsideQuery.Names(name, s.File)))
        {
            throw new NoDataException($"the store knows no file \"{name}\".");
        }

        return new CommandResult(ExitCode.Done, [], [], [], null) { SetAside = listing };
    }
}

/// <summary>What of the set-aside rows is asked for.</summary>
/// <param name="File">Path or name of a file, or null.</param>
/// <param name="Code">Reason, or null.</param>
/// <param name="Limit">Most rows; 0 for all.</param>
/// <param name="All">Whether older versions of a file count too.</param>
internal sealed record SetAsideQuery(string? File, string? Code, int Limit, bool All)
{
    /// <summary>Whether a text names a file: by its whole path or by its last part.</summary>
    public static bool Names(string text, string file) => file == text || file[(file.LastIndexOf('/') + 1)..] == text;
}
