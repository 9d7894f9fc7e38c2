using ClimateLens.Cli.Output;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Cli.Commands;

/// <summary>Houses whose readings end early: nobody watches the run, so a logger that stopped must not go unnoticed.</summary>
internal static class Unfinished
{
    /// <summary>
    /// A warning for each house that lacks the newest whole week which another house has. A house whose last week is merely
    /// not whole yet is told in passing.
    /// </summary>
    public static IReadOnlyList<Problem> Of(Session session, Messages messages)
    {
        var last = session.Nursery.Houses.Select(h => (House: h, Weeks: RunCommand.WeeksOf(session, h), Extent: session.Store.Extent(h.Id))).ToList();
        IsoWeek? newest = last.SelectMany(h => h.Weeks).Cast<IsoWeek?>().Max();
        List<Problem> problems = [];
        foreach ((HouseSettings house, IReadOnlyList<IsoWeek> weeks, Interval? extent) in last)
        {
            if (extent is not { } known || newest is not { } week || weeks.Count == 0) // without any week the run says so already
            {
                continue;
            }

            string end = $"{known.End.InZone(session.Nursery.Zone).LocalDateTime:ddd uuuu-MM-dd HH:mm}";
            IsoWeek ending = IsoWeek.Of(known.End.InZone(session.Nursery.Zone).Date);
            if (weeks[^1] < week)
            {
                problems.Add(new Problem("review.behind", Severity.Warning, session.Nursery.FileName, null, null,
                    $"{house.Name} has no whole week {week}: its readings end {end}", "readings up to the end of the week, as other houses have", "Look whether its logger stopped or its newest export is missing."));
            }
            else if (ending > weeks[^1])
            {
                messages.Say($"{house.Name}: week {ending} is not whole yet, so it has no page; readings end {end}.");
            }
        }

        return problems;
    }
}
