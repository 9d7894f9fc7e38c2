using System.Collections.Immutable;
using ClimateLens.Cli.Output;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.Reports;

namespace ClimateLens.Cli.Commands;

/// <summary>
/// <c>run NURSERY --house H --week W</c>: one page out of what the store holds. It imports nothing and writes nothing but that page, so that
/// any number of them may run side by side; started again it does nothing.
/// </summary>
internal static class OneHouseWeek
{
    public static CommandResult Run(Request request, Messages messages, string houseId, IsoWeek week)
    {
        Session.NeedMemory();
        using Session session = Session.OpenToRead(request, messages);
        HouseSettings house = session.HouseOf(houseId);
        HouseInput input = WorkLeft.InputOf(session, house, week);
        if (!input.HasReadings)
        {
            throw new NoDataException($"{house.Name} has no readings in {week}: {RunCommand.Describe(session.Store.Extent(house.Id), session.Nursery.Zone)}. This command imports nothing; plan and import do.");
        }

        using OnePagePublisher place = session.PageOf(house, week);
        string hash = session.HashOf(input);
        if (place.CurrentOf(hash) is { } current)
        {
            return Result(session, current, "unchanged", "The page stands as it would be made now.");
        }

        PublishedPage page = session.Told(place.Publish(place.ReviewOf(hash) ?? session.Review(input), WorkLeft.TraceOf(session, house, week).Hash));
        return Result(session, page.Summary, page.FailedCells.IsEmpty ? "new" : "withFailedCells", "The finish command takes it into the index.");
    }

    private static CommandResult Result(Session session, HouseWeekSummary summary, string status, string said)
        => new(session.AnythingLost ? ExitCode.DoneWithLoss : ExitCode.Done, session.Problems, [], ImmutableArray.Create(new HouseWeekLine(summary, status)), null) { Summary = said };
}
