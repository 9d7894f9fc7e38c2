using System.CommandLine;
using ClimateLens.Analysis;
using ClimateLens.Analysis.Comparison;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Cli.Output;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary><c>compare NURSERY --houses A,B --week W</c>: two houses side by side, or one house at two times.</summary>
internal static class CompareCommand
{
    public static Command Create(TextWriter output, TextWriter error)
    {
        Command command = new("compare", """
            Hold two houses side by side over one week or from one day to another, or one house over two periods of one length, and publish the page.

            Example: climatelens compare sample-logs/nursery.toml --houses 1,2 --week 2025-W42
            Example: climatelens compare sample-logs/nursery.toml --houses 1 --week 2025-W40 --against 2025-W42
            Example: climatelens compare sample-logs/nursery.toml --houses 1 --around 2025-10-15 --days 14
            """);
        CommonOptions common = new(command);
        Option<string> houses = new("--houses") { Description = "Two house ids, or one with --against.", Required = true, HelpName = "A,B" };
        Option<string?> with = new("--with") { Description = "Nursery file of the second house (default: the same one).", HelpName = "NURSERY" };
        Option<string?> against = new("--against") { Description = "The other week: the second side has it.", HelpName = "2025-W40" };
        Option<string?> around = new("--around") { Description = "A day on which something was changed: the days before it against those from it on.", HelpName = "2025-10-15" };
        Option<int> days = NumberOption.Whole("--days", 7, 1, MostDays, $"--days is a number from 1 to {MostDays}, together with --around.");
        (days.Description, days.HelpName) = ("Days on either side of --around (default: 7).", "N");
        PeriodOptions period = new(command, around);
        command.Options.Add(houses);
        command.Options.Add(with);
        command.Options.Add(against);
        command.Options.Add(around);
        command.Options.Add(days);
        command.Validators.Add(result =>
        {
            int named = CommonOptions.Given(result, houses!, out string? ids) ? Ids(ids).Length : 2;
            if (named is 0 or > 2 || (named == 1 && !CommonOptions.Given(result, against, out _) && !CommonOptions.Given(result, around, out _)))
            {
                result.AddError("--houses takes two ids such as 1,2, or one together with --against or --around.");
            }

            if (CommonOptions.Given(result, against, out string? other) && PeriodOptions.FaultOfWeek("--against", other!) is { } fault)
            {
                result.AddError(fault);
            }

            if (CommonOptions.Given(result, around, out string? day) && PeriodOptions.FaultOfDay("--around", day!) is { } dayFault)
            {
                result.AddError(dayFault);
            }

            if (result.GetResult(days) is { Implicit: false } && result.GetResult(around) is null)
            {
                result.AddError("--days goes together with --around.");
            }

            if (result.GetResult(around) is not null && result.GetResult(against) is not null)
            {
                result.AddError("Give --against or --around, not both.");
            }
        });
        command.SetAction(parsed =>
        {
            Request request = common.Read(parsed);
            string? other = parsed.GetValue(against);
            return Guard.Run(request, output, error, messages => Run(
                request, messages, Ids(parsed.GetValue(houses)), parsed.GetValue(with), zone => parsed.GetValue(around) is { } at
                    ? PeriodOptions.Around(at, parsed.GetValue(days), zone)
                    : (period.Of(parsed, zone), other is null ? period.Of(parsed, zone) : PeriodOptions.OfWeek(other, zone))));
        });
        return command;
    }

    private const int MostDays = 62;

    private static string[] Ids(string? text) => (text ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static CommandResult Run(Request request, Messages messages, string[] ids, string? with, Func<DateTimeZone, (Interval First, Interval Second)> periods)
    {
        using Session session = Session.OpenWithSite(request, messages);
        session.Import();
        Review first = ReviewOf(session, ids[0], periods(session.Nursery.Zone).First);
        Review second;
        if (with is null)
        {
            second = ReviewOf(session, ids[^1], periods(session.Nursery.Zone).Second);
        }
        else
        {
            using Session other = Session.Open(request with { NurseryPath = with }, messages);
            other.Import();
            second = ReviewOf(other, ids[^1], periods(other.Nursery.Zone).Second);
        }

        if (!HousesCompared.CanBe(first, second))
        {
            throw new NoDataException($"the two periods differ in length ({first.Hours.Length} and {second.Hours.Length} hours): a week in which the clock changes can be compared with none but itself.");
        }

        PublishedComparison page = session.Site.PublishComparison(first, second);
        return new CommandResult(session.AnythingLost || !page.FailedCells.IsEmpty ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, [], [], page.IndexHtml)
        {
            Summary = Said(page.Report),
        };
    }

    private static string Said(ComparisonReport report) => report.RiskHours is { } risk
        ? $"{report.First.Name}: {report.First.RiskHours!.Value:0} risk hours; {report.Second.Name}: {report.Second.RiskHours!.Value:0}. Difference {risk.Difference:+0;-0;0} ({risk.ByChance.Low:+0;-0;0} to {risk.ByChance.High:+0;-0;0} by chance)."
        : "The risk hours of one side are not known.";

    private static Review ReviewOf(Session session, string id, Interval period)
    {
        HouseSettings house = session.HouseOf(id);
        HouseInput input = session.Load(house, period, ReviewPipeline.RunIn, ReviewPipeline.History);
        return input.HasReadings ? session.Review(input)
            : throw new NoDataException($"{house.Name} has no readings in that period: {RunCommand.Describe(session.Store.Extent(house.Id), session.Nursery.Zone)}.");
    }
}
