using ClimateLens.Analysis.Text;
using ClimateLens.Analysis.WateringEvents;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Which waterings reached the pots of a bench. One of a bench that no check names may be any bench, so it counts for all.</summary>
/// <param name="events">Waterings in time order.</param>
/// <param name="benches">Benches that checks name.</param>
internal sealed class BenchWaterings(IEnumerable<WateringEvent> events, IEnumerable<string> benches)
{
    private readonly HashSet<string> _benches = new(benches, StringComparer.OrdinalIgnoreCase);
    private readonly WateringEvent[] _events = [.. events.Where(e => e.Method != WateringMethod.Fog).OrderBy(e => e.Start)];

    /// <summary>Waterings of a bench that touch a stretch of time.</summary>
    public IEnumerable<WateringEvent> Of(string bench, Instant from, Instant to)
        => _events.Where(e => Reaches(e, bench) && e.Start < to && (e.End ?? e.Start) >= from);

    /// <summary>Whether a bench was watered in a stretch of time.</summary>
    public bool Any(string bench, Instant from, Instant to) => Of(bench, from, to).Any();

    private bool Reaches(WateringEvent watering, string bench) => RecordText.SameBench(watering.Bench, bench) || !_benches.Contains(watering.Bench);
}
