using System.Collections.Immutable;
using System.CommandLine;
using ClimateLens.Cli.Output;

namespace ClimateLens.Cli.Commands;

/// <summary><c>finish NURSERY</c>: index, feed and latest.json out of the pages that stand in the site.</summary>
internal static class FinishCommand
{
    public static Command Create(TextWriter output, TextWriter error) => CommonOptions.Command("finish", """
        Make the index, the feed and latest.json out of the pages that stand in the site, after runs of single house-weeks. Imports nothing
        and makes no pages. Ends with 1 when house-weeks are still to be reviewed.

        Example: climatelens finish sample-logs/nursery.toml
        """, output, error, Run);

    private static CommandResult Run(Request request, Messages messages)
    {
        using Session session = Session.OpenWithSite(request, messages);
        session.Site.TakeUpPages();
        ImmutableArray<HouseWeekLine> lines = [.. session.Site.Summaries.Select(s => new HouseWeekLine(s, "unchanged"))];
        if (lines.IsEmpty)
        {
            throw new NoDataException($"no page stands in {Path.GetDirectoryName(session.SiteIndex)}: run the house-weeks that plan lists first.");
        }

        ImmutableArray<PlannedWeek> left = WorkLeft.All(session);
        session.Report(Unfinished.Of(session, messages));
        if (!left.IsEmpty || session.Site.RunKey != session.RunKey)
        {
            session.Site.Complete(left.IsEmpty ? session.RunKey : ""); // a finish that a scheduler starts twice leaves the index as it is
        }

        return new CommandResult(left.IsEmpty && !session.AnythingLost ? ExitCode.Done : ExitCode.DoneWithLoss, session.Problems, [], lines, session.SiteIndex)
        {
            Plan = left,
            Summary = left.IsEmpty ? "" : $"Still to be reviewed:\n{string.Join('\n', left.Select(p => p.Options))}",
        };
    }
}
