using System.CommandLine;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary><c>review NURSERY --house H --week W</c>: one house and period, of any length.</summary>
internal static class ReviewCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("review", """
            Review one house for one week, or from one day to another (the last day is included), and publish its page.

            Example: climatelens review sample-logs/nursery.toml --house 1 --week 2025-W42
            """);
        CommonOptions common = new(command);
        Option<string> house = new("--house") { Description = "House id from the nursery file.", Required = true, HelpName = "ID" };
        PeriodOptions period = new(command);
        command.Options.Add(house);
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            return Guard.Run(request, output, error, messages => Run(
                request, messages, parsed.GetValue(house)!, zone => period.Of(parsed, zone), period.Words(parsed)));
        });
        return command;
    }

    private static CommandResult Run(Request request, Messages messages, string houseId, Func<DateTimeZone, Interval> periodIn, string asked)
    {
        using Session session = Session.OpenWithSite(request, messages);
        HouseSettings house = session.HouseOf(houseId);
        Interval period = periodIn(session.Nursery.Zone);
        ImportReport imported = session.Import();
        HouseInput input = session.Load(house, period, ReviewPipeline.RunIn, ReviewPipeline.History);
        if (!input.HasReadings)
        {
            throw new NoDataException($"{house.Name} has no readings in {asked}: {RunCommand.Describe(session.Store.Extent(house.Id), session.Nursery.Zone)}.");
        }

        Review review = session.Review(input);
        PublishedPage page = session.Publish(review);

        // The index gets the new page; the key stays away, so that the next run looks at every week again.
        session.Site.Complete("");
        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, imported.Sheets,
            [new HouseWeekLine(page.Summary, page.FailedCells.IsEmpty ? "new" : "withFailedCells")], page.IndexHtml)
        {
            Review = review,
        };
    }
}
