using System.Collections.Immutable;
using NodaTime;

namespace ClimateLens.Analysis.Gridding;

/// <summary>The step of a house's grid: the native step of its main source, rounded up to a whole part of an hour.</summary>
public static class GridStep
{
    private const double SlowClock = 1.01; // common practice, no source

    /// <summary>Steps that a grid may have. [min]</summary>
    public static ImmutableArray<int> Minutes { get; } = [1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 60];

    /// <summary>
    /// The grid step for a source: the shortest part of an hour that is not shorter than its native step, so that no
    /// step of a complete source stays empty; an hour for slower sources. A clock that runs a little slow (301 s for five minutes) passes over a
    /// step now and then, which is bridged.
    /// </summary>
    /// <param name="nativeSeconds">Native step. [s]</param>
    public static Duration For(int nativeSeconds)
    {
        foreach (int minutes in Minutes)
        {
            if (minutes * 60 * SlowClock >= nativeSeconds)
            {
                return Duration.FromMinutes(minutes);
            }
        }

        return Duration.FromHours(1);
    }
}
