using ClimateLens.Analysis;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Cli.Commands;

/// <summary>Which house-weeks are to be reviewed: those whose page does not stand as this program would make it now.</summary>
internal static class WorkLeft
{
    /// <summary>What the review of a house-week looks at; null where there is nothing to do.</summary>
    public static HashedInput? Of(Session session, HouseSettings house, IsoWeek week)
    {
        HouseInput input = InputOf(session, house, week);
        if (!input.HasReadings)
        {
            return null; // a hole in the readings, or a stray stamp years away: no page of nothing
        }

        string hash = session.HashOf(input);
        return session.Site.IsCurrent(house.Id, week.ToString(), hash) ? null : new HashedInput(input, hash);
    }

    /// <summary>What the review of a house-week looks at.</summary>
    public static HouseInput InputOf(Session session, HouseSettings house, IsoWeek week)
        => session.Store.Load(house, week.In(session.Nursery.Zone), ReviewPipeline.RunIn, ReviewPipeline.History);

    /// <summary>All house-weeks that are to be reviewed, houses in the order of the nursery file.</summary>
    public static IEnumerable<PlannedWeek> All(Session session) => session.Nursery.Houses.SelectMany(house => RunCommand.WeeksOf(session, house)
        .Select(week => (Week: week, Input: Of(session, house, week)))
        .Where(w => w.Input is not null)
        .Select(w => new PlannedWeek(house.Id, w.Week, CostOf(w.Input!.Input))));

    /// <summary>Values that a review reads: more of them take longer, but not in proportion (docs/unattended.md).</summary>
    private static long CostOf(HouseInput input)
        => input.Batches.Concat(input.History).Sum(b => (long)b.UtcMicros.Length * b.Columns.Count) + input.Earlier.Sum(CostOf);
}

/// <summary>What a review looks at, and its hash.</summary>
/// <param name="Input">It.</param>
/// <param name="Hash">Its hash.</param>
internal sealed record HashedInput(HouseInput Input, string Hash);

/// <summary>A house-week that is to be reviewed.</summary>
/// <param name="House">House id.</param>
/// <param name="Week">Week.</param>
/// <param name="Values">Values that its review reads: an estimate of its cost.</param>
internal sealed record PlannedWeek(string House, IsoWeek Week, long Values)
{
    /// <summary>The options of <c>run</c> that do it.</summary>
    public string Options => $"--house {House} --week {Week}";
}
