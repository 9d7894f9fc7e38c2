using System.CommandLine;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Output;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;
using NodaTime;
using NodaTime.Text;

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
        Option<string?> week = new("--week") { Description = "ISO week.", HelpName = "2025-W42" };
        Option<string?> from = new("--from") { Description = "First day.", HelpName = "2025-10-13" };
        Option<string?> to = new("--to") { Description = "Last day, included.", HelpName = "2025-10-19" };
        command.Options.Add(house);
        command.Options.Add(week);
        command.Options.Add(from);
        command.Options.Add(to);
        command.Validators.Add(result =>
        {
            CommonOptions.Given(result, week, out string? weekText);
            CommonOptions.Given(result, from, out string? fromText);
            CommonOptions.Given(result, to, out string? toText);
            if (Fault(weekText, fromText, toText) is { } fault)
            {
                result.AddError(fault);
            }
        });
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            return Guard.Run(request, output, error, messages => Run(
                request, messages, parsed.GetValue(house)!, parsed.GetValue(week), parsed.GetValue(from), parsed.GetValue(to)));
        });
        return command;
    }

    // The years for which sunrise and sunset are worked out.
    private const int FirstYear = 1900, LastYear = 2100;

    private static string? Fault(string? week, string? from, string? to)
    {
        if (week is not null)
        {
            return from is not null || to is not null ? "Give --week, or --from and --to, not both."
                : IsoWeek.TryParse(week, out _) ? null
                : $"--week \"{week}\" is not an ISO week such as 2025-W42.";
        }

        if (from is null || to is null)
        {
            return "Give --week 2025-W42, or both --from and --to.";
        }

        return !TryDay(from, out LocalDate first) ? $"--from \"{from}\" is not a day such as 2025-10-13."
            : !TryDay(to, out LocalDate last) ? $"--to \"{to}\" is not a day such as 2025-10-19."
            : last < first ? "--to lies before --from."
            : null;
    }

    private static bool TryDay(string text, out LocalDate day) => LocalDatePattern.Iso.Parse(text).TryGetValue(default, out day) && day.Year is >= FirstYear and <= LastYear;

    private static CommandResult Run(Request request, Messages messages, string houseId, string? week, string? from, string? to)
    {
        using Session session = Session.OpenWithSite(request, messages);
        HouseSettings house = session.Nursery.Houses.FirstOrDefault(h => h.Id == houseId)
            ?? throw new NoDataException($"there is no house \"{houseId}\"; the nursery file has {string.Join(", ", session.Nursery.Houses.Select(h => h.Id))}.");
        Interval period = PeriodOf(week, from, to, session.Nursery.Zone);
        ImportReport imported = session.Import();
        HouseInput input = session.Store.Load(house, period, ReviewPipeline.RunIn, ReviewPipeline.History);
        if (!input.HasReadings)
        {
            throw new NoDataException($"{house.Name} has no readings in {week ?? $"{from} to {to}"}: {RunCommand.Describe(session.Store.Extent(house.Id), session.Nursery.Zone)}.");
        }

        Review review = ReviewPipeline.Run(input);
        PublishedPage page = session.Publish(review);

        // The index gets the new page; the key stays away, so that the next run looks at every week again.
        session.Site.Complete("");
        return new CommandResult(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, imported.Sheets,
            [new HouseWeekLine(page.Summary, page.FailedCells.IsEmpty ? "new" : "withFailedCells")], page.IndexHtml)
        {
            Review = review,
        };
    }

    private static Interval PeriodOf(string? week, string? from, string? to, DateTimeZone zone)
    {
        if (week is not null && IsoWeek.TryParse(week, out IsoWeek iso))
        {
            return iso.In(zone);
        }

        TryDay(from!, out LocalDate first);
        TryDay(to!, out LocalDate last);
        return new Interval(zone.AtStartOfDay(first).ToInstant(), zone.AtStartOfDay(last.PlusDays(1)).ToInstant());
    }
}
