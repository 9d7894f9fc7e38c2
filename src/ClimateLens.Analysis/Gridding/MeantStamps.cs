using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Gridding;

/// <summary>
/// Stamps that stray around the steps of the grid, put where they were meant: a logger that cuts 0:05 to 0:04, or asks its sensors two seconds early, wrote
/// the reading of that step. Stamps that keep an even distance are left alone, wherever in the step they lie.
/// </summary>
internal static class MeantStamps
{
    // Common practice, no source; held by tests on cut, jittering, shifted and slow clocks.
    private const int LeastRows = 24;
    private const double EvenShare = 0.75;
    private const double NearShare = 0.95;

    /// <summary>The stamps as they were meant; null where they stand for themselves.</summary>
    /// <param name="stamps">Ascending stamps. [µs]</param>
    /// <param name="step">Nominal step of the source. [µs]</param>
    /// <param name="start">Start of the grid. [µs]</param>
    /// <param name="strayed">Widest distance of a stamp from its place. [µs]</param>
    public static long[]? Of(long[] stamps, long step, long start, out long strayed)
    {
        strayed = 0;
        if (stamps.Length < LeastRows || IsEven(stamps, step))
        {
            return null;
        }

        long[] meant = new long[stamps.Length];
        int near = 0;
        for (int i = 0; i < stamps.Length; i++)
        {
            long apart = StepPhase.Apart(stamps[i], start, step);
            bool isNear = Math.Abs(apart) * 4 <= step;
            meant[i] = isNear ? stamps[i] - apart : stamps[i];
            strayed = isNear ? Math.Max(strayed, Math.Abs(apart)) : strayed;
            near += isNear ? 1 : 0;
        }

        return near >= NearShare * stamps.Length ? meant : null;
    }

    /// <summary>Whether most neighbours are whole steps apart.</summary>
    private static bool IsEven(long[] stamps, long step)
    {
        int even = 0;
        for (int i = 1; i < stamps.Length; i++)
        {
            even += (stamps[i] - stamps[i - 1]) % step == 0 ? 1 : 0;
        }

        return even >= EvenShare * (stamps.Length - 1);
    }
}
