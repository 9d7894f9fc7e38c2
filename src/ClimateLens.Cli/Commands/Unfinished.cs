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
        var last = session.Nursery.Houses.Select(h => (House: h, Newest: WorkLeft.NewestOf(session, h), Extent: session.Store.Extent(h.Id))).ToList();
        IsoWeek? newest = last.Max(h => h.Newest);
        List<Problem> problems = [];
        foreach ((HouseSettings house, IsoWeek? own, Interval? extent) in last)
        {
            if (extent is not { } known || newest is not { } week || own is not { } whole) // without any week the run says so already
            {
                continue;
            }

            string end = $"{known.End.InZone(session.Nursery.Zone).LocalDateTime:ddd uuuu-MM-dd HH:mm}";
            IsoWeek ending = IsoWeek.Of(known.End.InZone(session.Nursery.Zone).Date);
            if (whole < week)
            {
                problems.Add(new Problem("review.behind", Severity.Warning, session.Nursery.FileName, null, null,
                    $"{house.Name} has no whole week {week}: its readings end {end}", "readings up to the end of the week, as other houses have", "Look whether its logger stopped or its newest export is missing."));
            }
            else if (ending > whole)
            {
                messages.Say($"{house.Name}: week {ending} is not whole yet, so it has no page; readings end {end}.");
            }
        }

        return problems;
    }
}
