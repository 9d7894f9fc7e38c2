using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Gridding;

/// <summary>One batch seen from a grid: which step each of its stamps belongs to.</summary>
internal sealed class GridSource
{
    private const long MicrosPerSecond = 1_000_000;

    private readonly long[] _stamps;

    public GridSource(ReadingBatch batch, TimeAxis axis)
    {
        Batch = batch;
        StepMicros = batch.StepSeconds > 0 ? batch.StepSeconds * MicrosPerSecond : MedianStep(batch.UtcMicros, axis);
        AxisStartMicros = axis.Start.ToUnixTimeTicks() / 10;
        AxisStepMicros = axis.Step.BclCompatibleTicks / 10;
        Count = axis.Count;
        // What ends at its stamp began one native step earlier; from here on a stamp marks a beginning.
        ShiftMicros = batch.StampSide == StampSide.IntervalEnd ? -StepMicros : 0;
        _stamps = MeantStamps.Of(batch.UtcMicros, StepMicros, AxisStartMicros, out long strayed) ?? batch.UtcMicros;
        StrayMicros = ReferenceEquals(_stamps, batch.UtcMicros) ? 0 : strayed;
    }

    public ReadingBatch Batch { get; }

    public long StepMicros { get; }

    public long AxisStartMicros { get; }

    public long AxisStepMicros { get; }

    public int Count { get; }

    public long ShiftMicros { get; }

    /// <summary>How far stamps stray around the grid's steps, where each was put to the step that it was meant for; 0 where they stand for themselves. [µs]</summary>
    public long StrayMicros { get; }

    /// <summary>Whether a reading describes an interval rather than a moment.</summary>
    public bool IsInterval => Batch.StampSide != StampSide.Instant;

    public bool IsSlower => StepMicros > AxisStepMicros;

    /// <summary>
    /// Longest distance between two readings that is bridged. A source as fast as the grid: 1.5 of its steps, for stamps
    /// that stray over a step's edge; a missing row stays a gap. A slower one: 2 of its steps, 65 minutes at most. [µs]
    /// </summary>
    public long BridgeMicros => IsSlower
        ? Math.Min(2 * StepMicros, 65 * 60 * MicrosPerSecond)
        : StepMicros * 3 / 2;

    /// <summary>Beginning of reading <paramref name="row"/>. [µs]</summary>
    public long Begin(int row) => _stamps[row] + ShiftMicros;

    /// <summary>Step that holds a moment; may lie outside the axis.</summary>
    public long StepOf(long micros)
    {
        long offset = micros - AxisStartMicros;
        return offset >= 0 ? offset / AxisStepMicros : ((offset + 1) / AxisStepMicros) - 1;
    }

    private static long MedianStep(long[] stamps, TimeAxis axis)
    {
        if (stamps.Length < 2)
        {
            return axis.Step.BclCompatibleTicks / 10;
        }

        long[] steps = new long[stamps.Length - 1];
        for (int i = 0; i < steps.Length; i++)
        {
            steps[i] = stamps[i + 1] - stamps[i];
        }

        Array.Sort(steps);
        return Math.Max(1, steps[steps.Length / 2]);
    }
}
