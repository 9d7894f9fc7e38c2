using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>How the movement of a signal is measured.</summary>
public enum SignalSpread
{
    /// <summary>Standard deviation of the population.</summary>
    Deviation,

    /// <summary>Highest less lowest.</summary>
    Range,
}

/// <summary>
/// Attenuated-signal test: a signal that moves, but hardly, for a whole day is suspect, or fails: a sensor under a cover, in a wall, in
/// water, or on its last legs.
/// </summary>
/// <remarks>
/// <para><b>Formula:</b> spread of the window below the limit.</para>
/// <para><b>Source:</b> [QARTODTS] test 10; from memory. Held to vectors of an open implementation ([IOOSQC], qartod-vectors.json).</para>
/// </remarks>
public static class AttenuatedSignal
{
    /// <summary>Flags all values of a series alike: 4 or 3 when it moves less than a limit, else 1; 9 for NaN.</summary>
    /// <param name="values">Values. [any unit]</param>
    /// <param name="spread">How movement is measured.</param>
    /// <param name="suspect">Spread below which the series is suspect. [unit of values]</param>
    /// <param name="fail">Spread below which it fails. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Whole(ReadOnlySpan<double> values, SignalSpread spread, double suspect, double fail, Span<QualityFlag> flags)
    {
        double[] there = [.. values.ToArray().Where(v => !double.IsNaN(v))];
        double moved = there.Length == 0 ? double.NaN : spread == SignalSpread.Range ? there.Max() - there.Min() : Deviation(there);
        for (int i = 0; i < values.Length; i++)
        {
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : FlagOf(moved, suspect, fail);
        }
    }

    /// <summary>
    /// Flags each value by the range of the window that ends with it, and carries the flag back over the window. At least half of the
    /// window must hold values, else its end passes: little data prove nothing.
    /// </summary>
    /// <param name="values">Values on a regular grid. [any unit]</param>
    /// <param name="steps">Steps of the window, 1 or more.</param>
    /// <param name="suspect">Range below which a value is suspect. [unit of values]</param>
    /// <param name="flags">Receives one flag a value.</param>
    public static void Trailing(ReadOnlySpan<double> values, int steps, double suspect, Span<QualityFlag> flags)
    {
        SlidingRange range = new(steps + 1);
        for (int i = 0; i < values.Length; i++)
        {
            range.Push(values[i]);
            bool known = i >= steps && 2 * range.Present >= steps + 1;
            flags[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : known ? FlagOf(range.Range, suspect, 0) : QualityFlag.Pass;
        }

        FlatLine.CarryBack(flags, steps, steps);
    }

    private static QualityFlag FlagOf(double moved, double suspect, double fail)
        => moved < fail ? QualityFlag.Fail : moved < suspect ? QualityFlag.Suspect : QualityFlag.Pass;

    private static double Deviation(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
    }
}
