using System.Collections.Immutable;
using ClimateLens.Analysis;
using ClimateLens.Logs;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Cli.Commands;

/// <summary>Which house-weeks are to be reviewed: those whose page does not stand as this program would make it now.</summary>
internal static class WorkLeft
{
    /// <summary>
    /// The work on a house-week; null where there is nothing to do. Its readings are read only where the ledger does not tell that they are as they
    /// were when the page was made: a run must not take longer for every year that stands behind it.
    /// </summary>
    public static HouseWeekWork? Of(Session session, HouseSettings house, IsoWeek week) => Of(session, house, week, TraceOf(session, house, week));

    private static HouseWeekWork? Of(Session session, HouseSettings house, IsoWeek week, InputTrace trace)
    {
        if (trace.HasReadings == false)
        {
            return null; // a hole in the readings, or a stray stamp years away: no page of nothing
        }

        string name = week.ToString();
        if (session.Site.InputHashOf(house.Id, name, trace.Hash) is string known)
        {
            return session.Site.IsCurrent(house.Id, name, known) ? null : new HouseWeekWork(trace, known, null);
        }

        HouseInput input = InputOf(session, house, week);
        if (!input.HasReadings)
        {
            return null;
        }

        string hash = session.HashOf(input);
        if (!session.Site.IsCurrent(house.Id, name, hash))
        {
            return new HouseWeekWork(trace, hash, input);
        }

        session.Site.Retrace(house.Id, name, trace.Hash);
        return null;
    }

    /// <summary>What the review of a house-week looks at.</summary>
    public static HouseInput InputOf(Session session, HouseSettings house, IsoWeek week)
        => session.Load(house, week.In(session.Nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);

    /// <summary>What the ledger tells of that.</summary>
    public static InputTrace TraceOf(Session session, HouseSettings house, IsoWeek week)
        => session.Store.TraceOf(house, week.In(session.Nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);

    /// <summary>Whether a house has readings in a week.</summary>
    public static bool HasReadings(Session session, HouseSettings house, IsoWeek week)
        => HasReadings(session, house, week, TraceOf(session, house, week));

    /// <summary>A house's newest whole week with readings, or null.</summary>
    public static IsoWeek? NewestOf(Session session, HouseSettings house)
        => RunCommand.WeeksOf(session, house).Reverse().Where(week => HasReadings(session, house, week)).Cast<IsoWeek?>().FirstOrDefault();

    private static bool HasReadings(Session session, HouseSettings house, IsoWeek week, InputTrace trace)
        => trace.HasReadings ?? InputOf(session, house, week).HasReadings;

    /// <summary>All house-weeks that are to be reviewed, houses in the order of the nursery file.</summary>
    public static ImmutableArray<PlannedWeek> All(Session session)
    {
        ImmutableArray<PlannedWeek> all;
        string seen;
        do
        {
            seen = session.Store.Version;
            all = [.. Look(session)];
        }
        while (session.Store.Version != seen); // a damaged part was built again: weeks that were passed before may look at it too

        return all;
    }

    private static IEnumerable<PlannedWeek> Look(Session session) => session.Nursery.Houses.SelectMany(house => RunCommand.WeeksOf(session, house)
        .Select(week => (Week: week, Trace: TraceOf(session, house, week)))
        .Where(w => session.Site.Knows(house.Id, w.Week.ToString()) ? Of(session, house, w.Week, w.Trace) is not null : HasReadings(session, house, w.Week, w.Trace))
        .Select(w => new PlannedWeek(house.Id, w.Week, w.Trace.Values)));
}

/// <summary>A house-week whose page is to be made.</summary>
/// <param name="Trace">What the ledger tells of the input.</param>
/// <param name="Hash">Hash of the input.</param>
/// <param name="Input">The input; null where it was not read.</param>
internal sealed record HouseWeekWork(InputTrace Trace, string Hash, HouseInput? Input);

/// <summary>A house-week that is to be reviewed.</summary>
/// <param name="House">House id.</param>
/// <param name="Week">Week.</param>
/// <param name="Values">About how many values its review reads, an estimate of its cost: more of them take longer, but not in proportion (docs/unattended.md).</param>
internal sealed record PlannedWeek(string House, IsoWeek Week, long Values)
{
    /// <summary>The options of <c>run</c> that do it.</summary>
    public string Options => $"--house {House} --week {Week}";
}
