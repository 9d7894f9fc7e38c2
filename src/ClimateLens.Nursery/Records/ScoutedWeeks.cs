using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Records;

/// <summary>Which weeks before a period are looked back at because plants were counted: each with a count and the week before it, since a count can only show what came before.</summary>
public static class ScoutedWeeks
{
    /// <summary>Most weeks that are looked back at, the latest ones. Choice of this project: half a year, longer than a pot crop stands.</summary>
    public const int Most = 26;

    /// <summary>The earliest week that may be looked back at.</summary>
    /// <param name="period">The period under review.</param>
    /// <param name="zone">Zone of the nursery.</param>
    public static IsoWeek First(Interval period, DateTimeZone zone) => IsoWeek.Of(period.Start.InZone(zone).Date.PlusWeeks(-Most));

    /// <summary>The weeks that end by the start of a period, oldest first; none where nothing was counted.</summary>
    /// <param name="scouting">Scouting records of the house before the end of the period; other kinds are passed over.</param>
    /// <param name="period">The period under review.</param>
    /// <param name="zone">Zone of the nursery.</param>
    public static IReadOnlyList<IsoWeek> Before(IEnumerable<RecordRow> scouting, Interval period, DateTimeZone zone)
    {
        IsoWeek first = First(period, zone);
        return
        [
            .. scouting
                .Where(row => row.Kind == RecordKind.Scouting && row.At < period.End)
                .SelectMany(row => WithTheOneBefore(IsoWeek.Of(row.At.InZone(zone).Date)))
                .Distinct()
                .Where(week => week >= first && week.In(zone).End <= period.Start)
                .Order()
                .TakeLast(Most),
        ];
    }

    /// <summary>The week before another.</summary>
    public static IsoWeek BeforeThat(IsoWeek week) => IsoWeek.Of(week.Monday.PlusDays(-7));

    private static IEnumerable<IsoWeek> WithTheOneBefore(IsoWeek week) => [BeforeThat(week), week];
}
