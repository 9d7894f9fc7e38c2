using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;

namespace ClimateLens.Cli.Commands;

/// <summary><c>plan NURSERY</c>: imports what is new and lists the house-weeks that are to be reviewed.</summary>
internal static class PlanCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("plan", """
            Import what is new and list the house-weeks that are to be reviewed, a line each, as options of the run command. Makes no pages.

            Example: climatelens plan nursery.toml | xargs -r -P 4 -L 1 climatelens run nursery.toml; climatelens finish nursery.toml
            """);
        CommonOptions common = new(command);
        Option<bool> costs = new("--costs") { Description = "Add the cost of each, behind #: about how many values its review reads." };
        command.Options.Add(costs);
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            bool withCosts = parsed.GetValue(costs);
            return Guard.Run(request, output, error, messages => Run(request, messages, withCosts), request.Json ? null : result => TextResult.Write(output, result)); // also where it is quiet: the list is no message
        });
        return command;
    }

    private static CommandResult Run(Request request, Messages messages, bool withCosts)
    {
        using Session session = Session.OpenWithSite(request, messages);
        ImportReport imported = session.Import();
        ImmutableArray<PlannedWeek> plan = session.Site.RunKey == session.RunKey ? [] : WorkLeft.All(session);
        messages.Say(FormattableString.Invariant($"{plan.Length} house-week{(plan.Length == 1 ? "" : "s")} to review, {plan.Sum(p => p.Values):N0} values to read."));
        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, imported.Sheets, [], null)
        {
            Plan = plan,
            Summary = string.Join('\n', plan.Select(p => withCosts ? FormattableString.Invariant($"{p.Options} # {p.Values}") : p.Options)),
        };
    }
}
