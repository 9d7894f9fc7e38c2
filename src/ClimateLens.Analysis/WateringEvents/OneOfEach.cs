using ClimateLens.Nursery.Languages;
using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>
/// A watering that both a log and a valve tell of is one watering: the valve's times count, since it cannot be written
/// down late; litres and bench come from the log where the valve does not know them. The source names both.
/// </summary>
internal static class OneOfEach
{
    /// <summary>How far a handwritten time may be off. Common practice, no source.</summary>
    private static readonly Duration Slack = Duration.FromMinutes(10);

    /// <summary>Joins logged and valve waterings, in time order.</summary>
    public static IEnumerable<WateringEvent> Of(IReadOnlyList<WateringEvent> logged, IReadOnlyList<WateringEvent> valves)
    {
        List<WateringEvent> joined = [.. valves];
        foreach (WateringEvent log in logged)
        {
            int same = joined.FindIndex(0, valves.Count, valve => valve.IsLike(log) && valve.Overlaps(log, Slack));
            if (same < 0)
            {
                joined.Add(log);
                continue;
            }

            WateringEvent valve = joined[same];
            joined[same] = valve with
            {
                Bench = valve.Bench.Length > 0 ? valve.Bench : log.Bench,
                Litres = valve.Litres ?? log.Litres,
                Source = Phrase.Of($"{valve.Source}; also logged in {log.Source}"),
            };
        }

        return InOrder(joined);
    }

    /// <summary>
    /// Adds what water meters tell, in time order. A run of a meter in which logs or valves tell of waterings is those; where it is a single one without litres, the meter's count.
    /// </summary>
    public static IEnumerable<WateringEvent> WithMeters(IEnumerable<WateringEvent> told, IReadOnlyList<WateringEvent> metered)
    {
        List<WateringEvent> all = [.. told];
        foreach (WateringEvent run in metered)
        {
            int[] within = [.. Enumerable.Range(0, all.Count).Where(i => all[i].Overlaps(run, Slack) && (all[i].Method == run.Method || run.Method is null || all[i].Method is null))];
            if (within.Length == 0)
            {
                all.Add(run);
            }
            else if (within.Length == 1 && all[within[0]] is { Litres: null } single)
            {
                all[within[0]] = single with { Litres = run.Litres, Source = Phrase.Of($"{single.Source}; litres by {run.Source}") };
            }
        }

        return InOrder(all);
    }

    private static IEnumerable<WateringEvent> InOrder(IEnumerable<WateringEvent> events)
        => events.OrderBy(e => e.Start).ThenBy(e => e.Bench, StringComparer.Ordinal).ThenBy(e => e.Source, StringComparer.Ordinal);
}
