using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Pots;

/// <summary>Checks of a bench that lie close together, as visits.</summary>
internal static class BenchVisits
{
    /// <summary>Checks of a bench further apart than this from the first one belong to another visit. Choice of this project.</summary>
    private static readonly Duration OneRound = Duration.FromMinutes(90);

    /// <summary>Visits by bench in ordinal order of the benches, each in time order.</summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<BenchVisit>> Of(IEnumerable<PotCheck> checks)
        => checks
            .Where(check => check.Moisture is not null)
            .GroupBy(check => check.Bench)
            .ToImmutableSortedDictionary(bench => bench.Key, bench => Visits(bench.Key, [.. bench]), StringComparer.Ordinal);

    private static ImmutableArray<BenchVisit> Visits(string bench, PotCheck[] checks)
    {
        List<BenchVisit> visits = [];
        for (int first = 0, next; first < checks.Length; first = next)
        {
            next = first + 1;
            while (next < checks.Length && checks[next].At - checks[first].At <= OneRound)
            {
                next++;
            }

            visits.Add(new(bench, checks[first].At, checks[first..next].Average(c => c.Moisture!.Value), next - first));
        }

        return [.. visits];
    }
}
