using NodaTime;

namespace ClimateLens.Analysis.WateringEvents;

/// <summary>
/// Waterings of a house that follow each other less than an hour apart. The hour before one of them would hold the water of the one
/// before it, so the air is compared before and after the whole round. The hour is a choice of this project, no source.
/// </summary>
/// <param name="Start">Start of the first.</param>
/// <param name="End">Latest end, or null when an end is not known.</param>
internal sealed record WateringRound(Instant Start, Instant? End)
{
    private static readonly Duration Apart = Duration.FromHours(1);

    /// <summary>Waterings in time order, each with its round.</summary>
    public static IEnumerable<(WateringEvent Event, WateringRound Round)> Of(IEnumerable<WateringEvent> inTimeOrder)
    {
        List<WateringEvent> members = [];
        Instant reach = Instant.MinValue;
        List<(WateringEvent, WateringRound)> result = [];
        foreach (WateringEvent e in inTimeOrder)
        {
            if (members.Count > 0 && e.Start - reach >= Apart)
            {
                result.AddRange(Close(members));
                members.Clear();
            }

            Instant finish = e.End ?? e.Start;
            reach = members.Count == 0 ? finish : Instant.Max(reach, finish);
            members.Add(e);
        }

        return [.. result, .. Close(members)];
    }

    private static IEnumerable<(WateringEvent Event, WateringRound Round)> Close(List<WateringEvent> members)
    {
        if (members.Count == 0)
        {
            return [];
        }

        Instant? end = members.Any(e => e.End is null) ? null : members.Max(e => e.End);
        WateringRound round = new(members[0].Start, end);
        return [.. members.Select(e => (e, round))];
    }
}
