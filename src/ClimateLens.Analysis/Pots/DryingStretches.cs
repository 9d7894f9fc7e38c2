using ClimateLens.Science.Pots;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Stretches between two visits of a bench in which nothing was watered.</summary>
/// <param name="data">What was seen.</param>
/// <param name="power">Drying power of the air.</param>
/// <remarks>
/// <b>Rule:</b> visits 2 to 36 h apart, the first at level 4.5 or below, since free water drains, and not risen by 0.75 levels or more, which is a watering that no log has. Choices of this project.
/// </remarks>
internal sealed class DryingStretches(PotData data, DryingPower power)
{
    private static readonly Duration Shortest = Duration.FromHours(2), Longest = Duration.FromHours(36);
    private const double Watered = -0.75;
    private List<(Instant End, DryingStretch Stretch)>? _all;

    /// <summary>Benches in the order of their numbers.</summary>
    public string[] Benches { get; } = [.. data.Visits.Keys];

    /// <summary>Those that ended by a moment.</summary>
    public IEnumerable<DryingStretch> Until(Instant asOf) => (_all ??= [.. Find()]).Where(s => s.End <= asOf).Select(s => s.Stretch);

    private IEnumerable<(Instant, DryingStretch)> Find()
    {
        for (int bench = 0; bench < Benches.Length; bench++)
        {
            var visits = data.Visits[Benches[bench]];
            for (int i = 1; i < visits.Length; i++)
            {
                (BenchVisit from, BenchVisit to) = (visits[i - 1], visits[i]);
                double fall = from.Level - to.Level;
                if (to.At - from.At >= Shortest && to.At - from.At <= Longest && from.Level <= RootWeather.SaturatedLevel && fall > Watered && !data.Waterings.Any(Benches[bench], from.At, to.At))
                {
                    yield return (to.At, new(bench, power.Between(from.At, to.At), fall));
                }
            }
        }
    }
}
