namespace ClimateLens.Logs.Times;

/// <summary>
/// What a step from one row to the next costs a reading of a file, in bits: nothing for the usual step and for a repeated time, more for
/// a gap the longer it is, and more than any gap for a step back. Common practice, no source: only the ranks matter, as <see cref="StampOrder"/> asks for
/// clear differences.
/// </summary>
/// <param name="usual">Usual step. [µs]</param>
/// <param name="newestFirst">Whether the file is taken to run backwards.</param>
internal readonly struct StampSteps(long usual, bool newestFirst)
{
    private const float Gap = 2;

    // A gap of a century of five-minute steps costs 25; rows that a clock change or a slow line puts out of order cost a little less than a long gap.
    private const float Back = 28;
    private const float SlightlyBack = 12;
    private const long SlightReach = 2 * 3_600 * CivilDate.SecondMicros;

    private readonly long _reach = usual + (usual / 2);

    /// <summary>The cost of a step.</summary>
    public float CostOf(long from, long to)
    {
        long step = newestFirst ? from - to : to - from;
        if (step >= 0 && step <= _reach)
        {
            return 0;
        }

        float length = Math.Abs((float)step / usual);
        return step >= 0 ? Gap + MathF.Log2(length) : step >= -SlightReach ? SlightlyBack : Back + MathF.Log2(1 + length);
    }
}
