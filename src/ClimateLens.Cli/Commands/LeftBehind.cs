using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Cli.Commands;

/// <summary>Pages that stand while the readings behind them are gone, as after a corrected date format or time zone: nobody may take them for what was.</summary>
internal static class LeftBehind
{
    /// <summary>A warning for each.</summary>
    public static IEnumerable<Problem> Of(Session session)
    {
        Dictionary<string, HouseSettings> houses = session.Nursery.Houses.ToDictionary(h => h.Id, StringComparer.Ordinal);
        return session.Site.Summaries
            .Where(s => houses.ContainsKey(s.House) && IsoWeek.TryParse(s.Period, out IsoWeek week) && !WorkLeft.HasReadings(session, houses[s.House], week))
            .Select(s => new Problem("review.leftBehind", Severity.Warning, null, null, null,
                $"{s.HouseName}, {s.Period}: a page stands, but the store has no readings of that week any more", "",
                $"If it is right that they are gone, as after a corrected date format or time zone, delete the folder {Path.GetDirectoryName(s.Page)} of the site; else put the export back."));
    }
}
